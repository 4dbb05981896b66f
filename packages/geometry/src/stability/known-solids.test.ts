// Tilts at which single solids and small stacks give way. Sources: tests/corpus/solids.json (tilts from the inner radius
// of the base and the height of the centre of mass, 50 digits); regular solids from their dihedral angles; slide or tip
// from Halliday and Resnick (crate) and Wolfson, "Essential University Physics", chapter 12 no. 48; nests and logs
// worked out by hand. Lengths of a row are taken as mm times ten.

import { describe, expect, it } from 'vitest';
import rows from '../../../../tests/corpus/solids.json' with { type: 'json' };
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { FULL, judged, LIMITS, OPEN_SHELL, question, SHELL } from '../../../../tests/reference/judged-builds.ts';
import { box, cone, cube, cylinder, put, sphere } from '../../../../tests/reference/stacked-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { SolidSpec } from '../solids/types.ts';
import type { LaidPiece } from '../stack/types.ts';
import { contactColumns, weights, withPushes } from './equilibrium.ts';
import { leastPush } from './margin.ts';
import type { Material } from './material.ts';
import type { Posed, StabilityQuestion } from './question.ts';
import { pose } from './question.ts';
import type { Stability } from './stability.ts';

const DEGREE = Math.PI / 180;
const GRIPPY = 50;
/** Rows give twelve digits after the point or more. */
const TABLE = { absolute: 1e-9 };
const EXACT = { absolute: 1e-9 };

const alone = (spec: SolidSpec, material: Material, friction = GRIPPY, more: Partial<LaidPiece> = {}): Stability =>
  judged(question([put('it', 0, 0, { resting: restingOf(spec), ...more })], { it: spec }, material, friction));
const FLAT: Partial<Record<SolidSpec['solid'], string>> = {
  tetrahedron: 'face',
  octahedron: 'face',
  dodecahedron: 'face',
  icosahedron: 'face',
  cuboctahedron: 'square',
  hemisphere: 'flat',
};
const restingOf = ({ solid }: SolidSpec): string => FLAT[solid] ?? 'base';
const degrees = (it: Stability): number => (it.tipsAt?.tiltRad ?? Number.NaN) / DEGREE;

const prism = (sides: number, edge: number, height: number): SolidSpec => ({
  solid: 'regular-prism',
  sizes: { sides, edge, height },
});
const pyramid = (sides: number, edge: number, height: number): SolidSpec => ({
  solid: 'regular-pyramid',
  sizes: { sides, edge, height },
});
const frustum = (sides: number, edge: number, topEdge: number, height: number): SolidSpec => ({
  solid: 'regular-frustum',
  sizes: { sides, edge, topEdge, height },
});
const roundFrustum = (radius: number, topRadius: number, height: number): SolidSpec => ({
  solid: 'cone-frustum',
  sizes: { radius, topRadius, height },
});
const dome = (radius: number): SolidSpec => ({ solid: 'hemisphere', sizes: { radius } });
const regular = (
  solid: 'tetrahedron' | 'octahedron' | 'dodecahedron' | 'icosahedron' | 'cuboctahedron',
): SolidSpec => ({ solid, sizes: { edge: 10 } });

const SPECS: readonly (readonly [keyof typeof rows, SolidSpec])[] = [
  ['cube a=1', cube(10)],
  ['cube a=5', cube(50)],
  ['cuboid 6x4x3 (h=3)', box(60, 40, 30)],
  ['cuboid 14x9x17 (h=17)', box(140, 90, 170)],
  ['triangular prism a=1, h=1', prism(3, 10, 10)],
  ['triangular prism a=4, h=10', prism(3, 40, 100)],
  ['pentagonal prism a=1, h=1', prism(5, 10, 10)],
  ['pentagonal prism a=4, h=10', prism(5, 40, 100)],
  ['hexagonal prism a=1, h=1', prism(6, 10, 10)],
  ['hexagonal prism a=4, h=10', prism(6, 40, 100)],
  ['octagonal prism a=1, h=1', prism(8, 10, 10)],
  ['octagonal prism a=4, h=10', prism(8, 40, 100)],
  ['square pyramid a=6, h=4 (slant 5)', pyramid(4, 60, 40)],
  ['square pyramid a=10, h=12 (slant 13)', pyramid(4, 100, 120)],
  ['square pyramid, all edges 1 (J1)', pyramid(4, 10, 10 * Math.SQRT1_2)],
  ['triangular pyramid a=4, h=10', pyramid(3, 40, 100)],
  ['pentagonal pyramid a=4, h=10', pyramid(5, 40, 100)],
  ['hexagonal pyramid a=4, h=10', pyramid(6, 40, 100)],
  ['regular tetrahedron a=1 (on a face)', regular('tetrahedron')],
  ['regular octahedron a=1 (on a face)', regular('octahedron')],
  ['regular dodecahedron a=1 (on a face)', regular('dodecahedron')],
  ['regular icosahedron a=1 (on a face)', regular('icosahedron')],
  ['square antiprism a=1 (on a square)', { solid: 'antiprism', sizes: { sides: 4, edge: 10 } }],
  ['cuboctahedron a=1 (on a square)', regular('cuboctahedron')],
  ['square frustum 10 -> 4, h=4 (slant 5)', frustum(4, 100, 40, 40)],
  ['square frustum 4 -> 2, h=6 (Moscow papyrus 14)', frustum(4, 40, 20, 60)],
  ['hexagonal frustum 4 -> 2, h=6', frustum(6, 40, 20, 60)],
  ['cylinder r=1.0, h=1.0', cylinder(10, 10)],
  ['cylinder r=3.0, h=5.0', cylinder(30, 50)],
  ['cylinder r=4.0, h=13.0', cylinder(40, 130)],
  ['cone r=1.0, h=1.0', cone(10, 10)],
  ['cone r=3.0, h=4.0', cone(30, 40)],
  ['cone r=5.0, h=12.0', cone(50, 120)],
  ['cone r=2.0, h=6.0', cone(20, 60)],
  ['cone frustum R=6.0, r=3.0, h=4.0', roundFrustum(60, 30, 40)],
  ['cone frustum R=5.0, r=2.0, h=4.0', roundFrustum(50, 20, 40)],
  ['hemisphere r=1.0, flat face down', dome(10)],
  ['hemisphere r=3.0, flat face down', dome(30)],
];

describe('every solid on its base tips as tabled', () => {
  it.each(SPECS)('%s', (name, spec) => {
    const row = rows[name] as { tip_solid: string; tip_shell: string; tip_nobase?: string | null };
    expectNear(degrees(alone(spec, FULL)), Number(row.tip_solid), TABLE, 'full');
    expectNear(degrees(alone(spec, SHELL)), Number(row.tip_shell), TABLE, 'closed shell');
    if (row.tip_nobase != null)
      expectNear(degrees(alone(spec, OPEN_SHELL)), Number(row.tip_nobase), TABLE, 'open shell');
  });
  it.each([
    ['tetrahedron', 70.5287793655093],
    ['octahedron', 109.471220634491],
    ['dodecahedron', 116.565051177078],
    ['icosahedron', 138.189685104221],
  ] as const)('%s: (180 - dihedral angle) / 2', (solid, dihedral) => {
    expectNear(degrees(alone(regular(solid), FULL)), (180 - dihedral) / 2, { absolute: 1e-10 });
  });
  it('prism over 3-4-5, 10 high: full and shell balance over different points', () => {
    const spec: SolidSpec = { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 100 } };
    expectNear(degrees(alone(spec, FULL)), 9.09027692082232, EXACT);
    expectNear(degrees(alone(spec, SHELL)), 8.07175636667336, EXACT);
  });
  it('cone of radius 25 and height 50 on a cube of 50: shells 34.878, full 37.331', () => {
    const specs = { cube: cube(50), cone: cone(25, 50) };
    const pieces = [put('cube', 0, 0), put('cone', 0, 0)];
    expectNear(degrees(judged(question(pieces, specs, SHELL, GRIPPY))), 34.8782577472, EXACT);
    expectNear(degrees(judged(question(pieces, specs, FULL, GRIPPY))), 37.3308699919, EXACT);
  });
});

describe('two discs face to face', () => {
  it('keep their rim when they are equal: a frustum upside down on its like, full, tips at 20 / 34', () => {
    // R = 40, r = 20, h = 56: the centre of mass stands h (R2 + 2 R r + 3 r2) / (4 (R2 + R r + r2)) = 22 over the base.
    const pair = [put('it', 0, 0), put('it', 0, 0, { resting: 'top' })];
    const it = judged(question(pair, { it: roundFrustum(40, 20, 56) }, FULL, GRIPPY));
    expectNear(Math.tan(it.tipsAt?.tiltRad ?? Number.NaN), 20 / 34, EXACT);
  });
});

describe('slide or tip', () => {
  const crate = (friction: number): Stability =>
    alone(cube(1200), FULL, friction, { weighed: { massG: 7, centreMm: 900 } });
  it('Halliday and Resnick: a crate with its weight at 0.9 of 1.2 m slides at mu 0.60 and tips at 0.70', () => {
    const [slides, tips] = [crate(0.6), crate(0.7)];
    expectNear(slides.standsTo!.tiltRad / DEGREE, 30.9637565321, EXACT);
    expect(slides.first[0]?.hinge).toBe(null);
    expectNear(tips.standsTo!.tiltRad / DEGREE, 33.690067526, EXACT);
    expect(tips.first[0]?.hinge).not.toBe(null);
  });
  it('Wolfson: base half the height, mu 0.63: tips at 26.565 before it slides at 32.211', () => {
    const { tipsAt, slidesAt, standsTo } = alone(box(50, 50, 100), FULL, 0.63);
    expectNear(tipsAt!.tiltRad / DEGREE, 26.5650511771, EXACT);
    expectNear(slidesAt!.tiltRad / DEGREE, 32.2109277237, EXACT);
    expect(standsTo).toEqual(tipsAt);
  });
});

describe('round pieces', () => {
  it('a ball on a flat stands with no margin and rolls at a touch', () => {
    const specs = { cube: cube(50), ball: sphere(25) };
    const answer = judged(question([put('cube', 0, 0), put('ball', 0, 0, { resting: 'round' })], specs, FULL, 0.5));
    expect(answer).toMatchObject({ stands: true, verdict: 'rolls-at-a-touch', rolling: [1] });
    expectNear(answer.tipsAt!.push, 0, EXACT);
  });

  // Four unit cubes with gaps of half a unit and a ball of radius 1/2 that sits on their inner corners: the contacts lie
  // 0.353553 from its axis and as far below its centre. Side pushes are borne until the two corners behind let go.
  const nestOf = (friction: number, floor: number, cubesG: number): StabilityQuestion => {
    const corners = [-75, 75].flatMap((x) => [-75, 75].map((y) => put('cube', x, y, { weighed: { massG: cubesG } })));
    const asked = question(
      [...corners, put('ball', 0, 0, { resting: 'round' })],
      { cube: cube(100), ball: sphere(50) },
      FULL,
      0,
    );
    const surface = (mu: number) => ({ material: mu === friction ? 'ball' : 'cube', friction: mu });
    return {
      ...asked,
      solver: HIGHS,
      stuff: new Map([
        ['cube', { material: FULL, surface: surface(floor) }],
        ['ball', { material: FULL, surface: surface(friction) }],
      ]),
      table: surface(floor),
    };
  };
  const nest = (friction: number, floor: number, cubesG: number): Stability => judged(nestOf(friction, floor, cubesG));
  const posed = (asked: StabilityQuestion): Posed => {
    const answer = pose(asked, asked.pieces);
    if (!answer.ok) throw new Error('refused');
    return answer.value;
  };
  /** A full cube of 100 mm. */
  const CUBE_G = 500;
  const PLAN: readonly Vec2[] = [
    [1, 0],
    [0, 1],
  ];
  it('a slippery ball in a nest of heavy cubes holds a push of 0.70711', () => {
    expectNear(nest(0, GRIPPY, 1e6).standsTo!.push, Math.SQRT1_2, { absolute: 1e-6 });
  });
  it('with mu 0.5 throughout it holds 0.4520 on cones of eight edges, and 0.48 on the round ones', () => {
    const { problem } = posed(nestOf(0.5, 0.5, CUBE_G));
    const columns = contactColumns(problem, { edges: 8, turnRad: 0 });
    const model = { matrix: withPushes(columns, PLAN), right: weights(problem, [0, 0]), free: 2 };
    const coarse = leastPush(model, HIGHS, LIMITS, 0, []);
    expectNear(coarse.kind === 'margin' ? coarse.margin.push : Number.NaN, 0.452, { relative: 0.01 });
    // Cones of 64 edges give 0.48017; every finer cone gives a little more, by a quarter each time the edges are doubled.
    expectNear(Math.atan(nest(0.5, 0.5, CUBE_G).standsTo!.push), Math.atan(0.4806), { absolute: 0.1 * DEGREE });
  });
  it('without any friction the ball drives the cubes apart', () => {
    expect(nest(0, 0, CUBE_G)).toMatchObject({ stands: false, standsTo: null });
  });

  const RADIUS = 25;
  /** Two logs side by side and one in the groove, all turned by `turn`. */
  const logs = (between: number, floor: number, turnRad: number): Stability => {
    const at = (along: number) =>
      put('log', along * Math.cos(turnRad), along * Math.sin(turnRad), { resting: 'side', turnRad });
    const asked = question([at(-RADIUS), at(RADIUS), at(0)], { log: cylinder(RADIUS, 80) }, FULL, between);
    return judged({ ...asked, table: { material: 'floor', friction: floor } });
  };
  const TAN15 = Math.tan(15 * DEGREE);
  it.each([0, Math.PI / 2])(
    'three logs turned by %s stand iff mu between them is tan 15 and mu on the floor a third of it',
    (axis) => {
      expect(logs(TAN15 + 1e-5, 1, axis).stands).toBe(true);
      expect(logs(TAN15 - 1e-5, 1, axis).stands).toBe(false);
      expect(logs(1, TAN15 / 3 + 1e-5, axis).stands).toBe(true);
      expect(logs(1, TAN15 / 3 - 1e-5, axis).stands).toBe(false);
    },
  );

  it('a hemisphere on its dome rights itself up to asin(3/8) full; as a folded shell nothing is predicted', () => {
    const it = (material: Material): Stability =>
      judged(question([put('dome', 0, 0, { resting: 'dome' })], { dome: dome(30) }, material, GRIPPY));
    expectNear(it(FULL).standsTo!.tiltRad, Math.asin(3 / 8), EXACT);
    expect(it(FULL)).toMatchObject({ verdict: 'steady', rolling: [] });
    expectNear(it(SHELL).standsTo!.tiltRad, Math.asin(1 / 3), EXACT);
    expect(it(SHELL)).toMatchObject({ verdict: 'not-predicted', notPredicted: [{ piece: 0, why: 'paper-rolls' }] });
  });
});
