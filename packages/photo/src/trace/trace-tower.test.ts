// Whole builds from exact taps on known cameras, without photos: levels from the table up, neighbours set side by side, and a layout that,
// dropped anew by the engine, stands as it was traced.

import type { LaidPiece, PlacedPiece, Resting, Solid, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { dropPieces, makeSolid, placePiece } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { fittedAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { figureOf } from './figure.ts';
import { cornersSeen, rimSeen } from './rim.ts';
import { topSeen, topShapeOf } from './top-shape.ts';
import type { TappedPiece, TracedTower } from './trace-tower.ts';
import { traceTower } from './trace-tower.ts';

const above = fittedAt(22, 0.03);
const beside = fittedAt(71, 0.03);

interface Known {
  readonly spec: SolidSpec;
  readonly laid: LaidPiece;
  readonly bottomMm: number;
}

const known = (spec: SolidSpec, x: number, y: number, turnRad: number, bottomMm: number): Known => ({
  spec,
  laid: { kind: JSON.stringify(spec), resting: 'base', xMm: x, yMm: y, turnRad },
  bottomMm,
});

const solidOf = (spec: SolidSpec): { readonly solid: Solid; readonly resting: Resting } => {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return { solid: made.value, resting: made.value.restings[0]! };
};

const placedOf = ({ spec, laid, bottomMm }: Known): PlacedPiece => placePiece({ laid, ...solidOf(spec) }, 0, bottomMm);

function tapped({ spec, laid, bottomMm }: Known, off: () => number): TappedPiece {
  const { solid, resting } = solidOf(spec);
  const figure = figureOf(solid, resting)!;
  const corners = cornersSeen(above.camera, figure, laid, bottomMm);
  const points =
    corners.length > 0 ? [0, 2, 1].map((k) => corners[k]!) : rimSeen(above.camera, figure, laid, bottomMm, 3);
  const pixels = points.map((point): Vec2 => {
    const [u, v] = project(above.truth, point);
    return [u + off(), v + off()];
  });
  return { kind: laid.kind, solid, resting, taps: { pixels, sigmaPx: 2 } };
}

function traced(build: readonly Known[], off = (): number => 0): TracedTower {
  const top = build.map(placedOf).reduce((a, b) => (b.topMm > a.topMm ? b : a));
  const index = build.map(placedOf).findIndex(({ topMm }) => topMm === top.topMm);
  const ends = topSeen(beside.camera, topShapeOf(top.solid, top.resting), build[index]!.laid, top.topMm);
  const pixels = ends.map((point): Vec2 => project(beside.truth, point));
  const tower = traceTower(
    { photo: null, camera: above.camera },
    { photo: null, camera: beside.camera },
    { pieces: build.map((one) => tapped(one, off)), top: { pixels, sigmaPx: 2 } },
  );
  if (!tower.ok) throw new Error(JSON.stringify(tower.issues));
  return tower.value;
}

const box: SolidSpec = { solid: 'rectangular-prism', sizes: { length: 62, width: 55, height: 51 } };
const cylinder: SolidSpec = { solid: 'cylinder', sizes: { radius: 23, height: 46 } };
const cone: SolidSpec = { solid: 'cone', sizes: { radius: 21, height: 49 } };
const cube: SolidSpec = { solid: 'cube', sizes: { edge: 50 } };

it('a tower of three and a piece beside it: levels, spots, height', () => {
  const build = [
    known(box, 2, -3, 0.6, 0),
    known(cylinder, 1, -6, 0, 51),
    known({ solid: 'regular-prism', sizes: { sides: 6, edge: 20, height: 43 } }, -67, 5, 0.3, 0),
    known(cone, 0, -5, 0, 97),
  ];
  const tower = traced(build);
  tower.pieces.forEach(({ placed, laid }, k) => {
    expectNear(placed.bottomMm, build[k]!.bottomMm, { absolute: 1e-6 }, `bottom of ${k}`);
    expectPointNear([laid.xMm, laid.yMm], [build[k]!.laid.xMm, build[k]!.laid.yMm], 0.15, `spot of ${k}`);
  });
  expectNear(tower.stackedMm, 146, { absolute: 1e-9 });
  expectNear(tower.height!.heightMm, 146, { absolute: 0.3 });
  expect(tower.height!.sigmaMm).toBeGreaterThan(0.3);
  expect(tower.height!.sigmaMm).toBeLessThan(3);
});

it('the layout, dropped anew, stands as it was traced', () => {
  const build = [known(box, 2, -3, 0.6, 0), known(cylinder, 1, -6, 0, 51), known(cone, 0, -5, 0, 97)];
  const { layout, pieces } = traced(build);
  const solids = new Map(build.map(({ spec, laid }) => [laid.kind, solidOf(spec).solid]));
  const dropped = dropPieces(layout.pieces, solids, 2);
  if (!dropped.ok) throw new Error(JSON.stringify(dropped.issues));
  dropped.value.pieces.forEach(({ bottomMm }, k) => {
    expectNear(bottomMm, pieces[k]!.placed.bottomMm, { absolute: 1e-9 });
  });
});

describe('a fort of eight cubes', () => {
  const ring = [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => [i, j] as const)).filter(([i, j]) => i !== 0 || j !== 0);
  const fort = ring.map(([i, j]) => known(cube, 50 * i, 50 * j, 0, 0));

  it.each([3, 17, 29])('traced by taps that are off, no cube climbs on its neighbour (seed %d)', (seed) => {
    const { between } = diceOf(seed);
    const { layout, pieces } = traced(fort, () => 3 * (between(0, 1) - 0.5));
    expect(pieces.map(({ placed }) => placed.bottomMm)).toEqual(Array(8).fill(0));
    const solids = new Map([[fort[0]!.laid.kind, solidOf(cube).solid]]);
    const dropped = dropPieces(layout.pieces, solids, 2);
    expect(dropped.ok && dropped.value.pieces.map(({ bottomMm }) => bottomMm)).toEqual(Array(8).fill(0));
    pieces.forEach(({ laid }, k) => {
      expectPointNear([laid.xMm, laid.yMm], [fort[k]!.laid.xMm, fort[k]!.laid.yMm], 2);
    });
  });
});

it('a fault is told with the piece and the tap that it is about', () => {
  const build = [known(box, 2, -3, 0.6, 0), known(cylinder, 1, -6, 0, 51)];
  const pieces = build.map((one) => tapped(one, () => 0));
  const [first, second] = pieces;
  const spoiled = { ...second!, taps: { ...second!.taps, pixels: second!.taps.pixels.slice(0, 2) } };
  const tower = traceTower({ photo: null, camera: above.camera }, null, { pieces: [first!, spoiled], top: null });
  expect(tower.ok ? [] : [tower.issues[0]!.code, ...tower.issues[0]!.path]).toEqual([
    'taps-too-few',
    'pieces',
    1,
    'taps',
  ]);
});
