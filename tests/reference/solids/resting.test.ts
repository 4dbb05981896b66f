// Every way to put a solid down: which side is lowest, how high it stands, and the outline, held against a search of
// the mesh. The centre of mass that makes the origin of the plan is the mesh's own.

import type { Outline, Resting, Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import { meshOf, rotate, supportPoint } from '@cairnmark/geometry';
import { expect } from 'vitest';
import { expectNear } from '../../tools/within.ts';
import { integrate, pointsOf, trianglesOf } from '../mesh-integrals.ts';
import { onEverySolid } from '../solid-cases.ts';

const FAMILY = { full: 100, part: 6 };
const FACETS = 96;
/** Rounding of rotated corners, relative to the size of the solid. */
const ROUNDING = 1e-12;

onEverySolid('it stands as high as the mesh, over the outline of the mesh', FAMILY, (solid) => {
  const mesh = meshOf(solid, FACETS);
  const centre = integrate(trianglesOf(mesh)).centroid;
  const bound = boundOf(solid);
  for (const resting of solid.restings) {
    const points = pointsOf(mesh.positions).map((point) => rotate(resting.rotation, minus(point, centre)));
    const heights = points.map(([, , z]) => z);
    const heightMm = Math.max(...heights) - Math.min(...heights);
    expectNear(resting.heightMm, heightMm, { absolute: bound }, `${resting.id} height`);
    for (const direction of directionsFor(resting.outline)) {
      const searched = Math.max(...points.map(([x, y]) => x * direction[0] + y * direction[1]));
      expectNear(support(resting.outline, direction), searched, { absolute: bound }, `${resting.id} outline`);
    }
  }
});

onEverySolid('the named side is lowest, and touches as it says', FAMILY, (solid) => {
  const near = ROUNDING * reach(solid);
  for (const resting of solid.restings) {
    const down = rotateBack(resting, [0, 0, -1]);
    const lowest = dot(supportPoint(solid.body, down), down);
    const under = solid.flatFaces.filter(({ normal }) => dot(normal, down) > 1 - ROUNDING);
    const reaching = solid.body.filter((part) => lowest - dot(supportPoint([part], down), down) <= near);
    expect(under.length, resting.id).toBe(resting.contact === 'face' ? 1 : 0);
    for (const face of under) {
      const level = face.kind === 'disc' ? face.centre : face.corners[0]!;
      expectNear(dot(level, down), lowest, { absolute: near });
    }
    if (resting.contact === 'line') expect(reaching.length, resting.id).toBe(2);
    if (resting.contact === 'point') expect(reaching.map(({ kind }) => kind)).toEqual([expect.stringMatching('ball')]);
  }
});

onEverySolid('rotations are rotations, ids differ, the first is the way it is made', FAMILY, (solid) => {
  expect(new Set(solid.restings.map(({ id }) => id)).size).toBe(solid.restings.length);
  for (const { rotation } of solid.restings) {
    const [x, y, z] = ([0, 3, 6] as const).map((k): Vec3 => [rotation[k], rotation[k + 1]!, rotation[k + 2]!]);
    for (const row of [x!, y!, z!]) expectNear(dot(row, row), 1, { absolute: 1e-14 });
    expectNear(dot(x!, y!), 0, { absolute: 1e-15 });
    expectNear(dot(cross(x!, y!), z!), 1, { absolute: 1e-14 }, 'right-handed');
  }
  const [first] = solid.restings;
  for (const axis of [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ] as const) {
    for (const [k, value] of rotate(first!.rotation, axis).entries()) expectNear(value, axis[k]!, { absolute: 1e-15 });
  }
  expect(dot(supportPoint(solid.body, [0, 0, -1]), [0, 0, 1])).toBe(0);
});

onEverySolid('polygon outlines turn left at every corner, once round, without idle corners', FAMILY, (solid) => {
  for (const { id, outline } of solid.restings) {
    if (outline.kind === 'disc') continue;
    const { points } = outline;
    const turns = points.map((corner, k) => {
      const [before, next] = [points.at(k - 1)!, points[(k + 1) % points.length]!];
      const [a, b] = [flat(corner, before), flat(next, corner)];
      const sine = (a[0] * b[1] - a[1] * b[0]) / (Math.hypot(...a) * Math.hypot(...b));
      expect(sine, `${id}: corner ${k} of ${points.length}`).toBeGreaterThan(1e-9);
      return Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
    });
    expectNear(
      turns.reduce((sum, turn) => sum + turn, 0),
      2 * Math.PI,
      { absolute: 1e-9 },
    );
  }
});

/** How far facets may lie inside the true body: a chord of a circle, twice over for a ball, and rounding. */
function boundOf(solid: Solid): number {
  const chord = solid.curvedSurfaces.length === 0 ? 0 : 2 * (1 - Math.cos(Math.PI / FACETS));
  return (chord + ROUNDING) * reach(solid);
}

/** The outward normals of its sides, thinned out for round outlines, and some directions in no relation to it. */
function directionsFor(outline: Outline): readonly Vec2[] {
  const free = Array.from({ length: 24 }, (_, k): Vec2 => [Math.cos(2.4 * k), Math.sin(2.4 * k)]);
  if (outline.kind === 'disc') return free;
  const { points } = outline;
  const sides = points.map((corner, k): Vec2 => {
    const [x, y] = flat(points[(k + 1) % points.length]!, corner);
    return [y / Math.hypot(x, y), -x / Math.hypot(x, y)];
  });
  const every = Math.ceil(sides.length / 24);
  return [...free, ...sides.filter((_, k) => k % every === 0)];
}

function support(outline: Outline, [x, y]: Vec2): number {
  if (outline.kind === 'disc') return outline.centre[0] * x + outline.centre[1] * y + outline.radiusMm;
  return Math.max(...outline.points.map((corner) => corner[0] * x + corner[1] * y));
}

/** The own direction that the rotation brings to `seen`. */
function rotateBack({ rotation: r }: Resting, [x, y, z]: Vec3): Vec3 {
  return [r[0] * x + r[3] * y + r[6] * z, r[1] * x + r[4] * y + r[7] * z, r[2] * x + r[5] * y + r[8] * z];
}

const reach = (solid: Solid): number => Math.max(solid.restings[0]!.heightMm, ...Object.values(solid.sizes));
const flat = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
