// The two second methods for unions: against known figures, and against each other.

import { describe, expect, it } from 'vitest';
import { freshSeed } from '../tools/share.ts';
import { expectNear } from '../tools/within.ts';
import { diceOf, times } from './dice.ts';
import { exactUnion } from './exact-union.ts';
import type { Polygon } from './outline-shapes.ts';
import { ngon, snapped } from './outline-shapes.ts';
import { slabUnion } from './slab-union.ts';
import { tracedAnnulus, UNION_FIGURES } from './union-figures.ts';

const GRID = 2 ** -20;

const pointsOf = (outlines: readonly unknown[]): readonly Polygon['points'][] =>
  (outlines as readonly Polygon[]).map(({ points }) => points);

describe('the slab integral', () => {
  it.each(UNION_FIGURES)('$name ($source)', ({ outlines, area, outer, inner }) => {
    const found = slabUnion(outlines);
    expectNear(found.areaMm2, area, { relative: 1e-12 }, 'area');
    // Where discs are tangent, cuts nearly coincide, and the curves are upright: half the digits.
    expectNear(found.perimeterMm, outer + inner, { relative: 1e-6 }, 'perimeter');
  });
});

describe('the exact arrangement', () => {
  const figures = UNION_FIGURES.filter(({ outlines }) => outlines.every((one) => one.kind === 'polygon'));
  it.each(figures)('$name ($source)', ({ outlines, area, outer, inner }) => {
    // Corners move by half a step of the grid, and turned sides that coincided come apart: only the area is kept by that.
    const found = exactUnion(pointsOf(snapped(outlines, GRID)), GRID);
    expectNear(found.areaMm2, area, { relative: 1e-5 }, 'area');
    if (outlines.length === 1) expectNear(found.perimeterMm, outer + inner, { relative: 1e-5 }, 'perimeter');
  });

  it('counts sides that coincide by their grid points, not by how they look', () => {
    const [left, right, apart] = [
      [
        [0, 0],
        [2, 0],
        [2, 4],
        [0, 4],
      ],
      [
        [2, 1],
        [5, 1],
        [5, 3],
        [2, 3],
      ],
      [
        [2 + GRID, 1],
        [5, 1],
        [5, 3],
        [2 + GRID, 3],
      ],
    ] as const;
    expect(exactUnion([left, right], GRID)).toEqual({ areaMm2: 14, perimeterMm: 18 });
    expectNear(exactUnion([left, apart], GRID).perimeterMm, 22, { absolute: 4 * GRID });
  });
});

const seed = freshSeed('union references');
it(`agree on 60 builds of polygons (seed ${seed})`, () => {
  for (let k = 0; k < 60; k += 1) {
    const { between, whole } = diceOf((seed + k) % 2 ** 31);
    const polygons = times(whole(1, 6), () =>
      ngon(between(0, 80), between(0, 80), between(5, 30), whole(3, 9), between(0, 7)),
    );
    const outlines = snapped([...polygons, tracedAnnulus(20, 5, 7)], GRID);
    const [exact, slab] = [exactUnion(pointsOf(outlines), GRID), slabUnion(outlines)];
    expectNear(slab.areaMm2, exact.areaMm2, { relative: 1e-11 }, `area, case ${k}`);
    expectNear(slab.perimeterMm, exact.perimeterMm, { relative: 1e-8 }, `perimeter, case ${k}`);
  }
});
