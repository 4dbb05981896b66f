// Worked examples of named schoolbooks. Where a book counts with pi = 3.14, the true value is asked of the solid and the
// printed one of its working done again with 3.14, to half a unit of the last printed digit.

import type { SolidSpec } from '@cairnmark/geometry';
import { describe, test } from 'vitest';
import { expectNear, expectPrinted } from '../../tools/within.ts';
import { rework } from '../rework.ts';
import { solidOf } from '../solid-cases.ts';

const INCH = 25.4;
/** True values are given with up to 15 digits. */
const NEAR = { relative: 1e-12 };

interface Printed {
  readonly name: string;
  readonly spec: SolidSpec;
  readonly unit: 'cm' | 'in';
  /** What the source prints, and half a unit of its last digit. */
  readonly volume?: readonly [value: number, half: number];
  readonly surface?: readonly [value: number, half: number];
  readonly trueVolume: number;
  readonly trueSurface?: number;
}

// OpenStax, Prealgebra 2e, section 9.6 "Solve Geometry Applications: Volume and Surface Area".
const PREALGEBRA: readonly Printed[] = [
  {
    name: '9.47',
    unit: 'cm',
    spec: { solid: 'rectangular-prism', sizes: { length: 14, width: 9, height: 17 } },
    volume: [2142, 0],
    surface: [1034, 0],
    trueVolume: 2142,
    trueSurface: 1034,
  },
  {
    name: '9.48',
    unit: 'in',
    spec: { solid: 'rectangular-prism', sizes: { length: 30, width: 25, height: 20 } },
    volume: [15_000, 0],
    surface: [3700, 0],
    trueVolume: 15_000,
    trueSurface: 3700,
  },
  {
    name: '9.49',
    unit: 'in',
    spec: { solid: 'cube', sizes: { edge: 2.5 } },
    volume: [15.625, 0],
    surface: [37.5, 0],
    trueVolume: 15.625,
    trueSurface: 37.5,
  },
  {
    name: '9.50',
    unit: 'in',
    spec: { solid: 'cube', sizes: { edge: 2 } },
    volume: [8, 0],
    surface: [24, 0],
    trueVolume: 8,
    trueSurface: 24,
  },
  {
    name: '9.51',
    unit: 'in',
    spec: { solid: 'sphere', sizes: { radius: 6 } },
    volume: [904.32, 0.005],
    surface: [452.16, 0.005],
    trueVolume: 904.77868423386,
    trueSurface: 452.38934211693,
  },
  {
    name: '9.52',
    unit: 'in',
    spec: { solid: 'sphere', sizes: { radius: 14 } },
    volume: [11_488.21, 0.005],
    surface: [2461.76, 0.005],
    trueVolume: 11494.0403219339,
    trueSurface: 2463.0086404144,
  },
  {
    name: '9.53',
    unit: 'in',
    spec: { solid: 'cylinder', sizes: { radius: 3, height: 5 } },
    volume: [141.3, 0.05],
    surface: [150.72, 0.005],
    trueVolume: 141.371669411541,
    trueSurface: 150.79644737231,
  },
  {
    name: '9.54',
    unit: 'cm',
    spec: { solid: 'cylinder', sizes: { radius: 4, height: 13 } },
    volume: [653.12, 0.005],
    surface: [427.04, 0.005],
    trueVolume: 653.451271946677,
    trueSurface: 427.256600888212,
  },
  {
    name: '9.55',
    unit: 'in',
    spec: { solid: 'cone', sizes: { radius: 2, height: 6 } },
    volume: [25.12, 0.005],
    trueVolume: 25.1327412287183,
    trueSurface: 52.3047236775436,
  },
  {
    name: '9.56',
    unit: 'in',
    spec: { solid: 'cone', sizes: { diameter: 5, height: 8 } },
    volume: [52.33, 0.005],
    trueVolume: 52.3598775598299,
  },
];

describe('OpenStax Prealgebra 2e, section 9.6, counted with pi = 3.14', () => {
  test.each(PREALGEBRA)('example $name, $spec.solid', ({ spec, unit, ...printed }) => {
    const mm = unit === 'in' ? INCH : 10;
    const solid = solidOf(spec, mm);
    expectNear(solid.volumeMm3 / mm ** 3, printed.trueVolume, NEAR, 'true volume');
    if (printed.trueSurface !== undefined)
      expectNear(solid.surfaceMm2 / mm ** 2, printed.trueSurface, NEAR, 'true surface');
    const { volume, surface } = solid.workings;
    if (printed.volume !== undefined) expectPrinted(rework(volume, 3.14) / mm ** 3, printed.volume);
    if (printed.surface !== undefined) expectPrinted(rework(surface, 3.14) / mm ** 2, printed.surface);
  });

  test('exercise 283, a ball of radius 15 in, printed with the true pi', () => {
    const solid = solidOf({ solid: 'sphere', sizes: { radius: 15 } }, INCH);
    expectPrinted(solid.volumeMm3 / INCH ** 3, [14_137.17, 0.005]);
    expectPrinted(solid.surfaceMm2 / INCH ** 2, [2827.43, 0.005]);
    expectNear(solid.volumeMm3 / INCH ** 3, 14137.1669411541, NEAR);
    expectNear(solid.surfaceMm2 / INCH ** 2, 2827.43338823081, NEAR);
  });
});

describe('OpenStax Contemporary Mathematics, "Volume and Surface Area"', () => {
  test('example 1: box 10 x 5 x 3 cm', () => {
    const solid = solidOf({ solid: 'rectangular-prism', sizes: { length: 10, width: 5, height: 3 } }, 10);
    expectNear(solid.volumeMm3, 150_000, NEAR);
    expectNear(solid.surfaceMm2, 19_000, NEAR);
  });

  test('example 2: prism over a triangle with base 12 and height 6, 10 in long; printed 361.8 from legs of 8.49', () => {
    const leg = Math.hypot(6, 6);
    const solid = solidOf({ solid: 'triangular-prism', sizes: { a: 12, b: leg, c: leg, height: 10 } }, INCH);
    expectNear(solid.volumeMm3 / INCH ** 3, 360, NEAR);
    expectNear(solid.surfaceMm2 / INCH ** 2, 361.705627484771, NEAR);
    const rounded = solidOf({ solid: 'triangular-prism', sizes: { a: 12, b: 8.49, c: 8.49, height: 10 } }, INCH);
    // The book rounds the legs in the perimeter alone; the triangle of rounded legs is 0.07 larger at each end.
    expectNear(rounded.lateralMm2! / INCH ** 2 + 72, 361.8, { absolute: 1e-9 });
  });

  test('third example, put right: triangular prism of side 12, 10 long (the book mixes sides 6 and 12)', () => {
    const solid = solidOf({ solid: 'regular-prism', sizes: { sides: 3, edge: 12, height: 10 } }, 10);
    expectNear(solid.volumeMm3 / 1000, 623.538290724796, NEAR);
    expectNear(solid.surfaceMm2 / 100, 484.707658144959, NEAR);
  });

  test('example 5: cylinder r 5, h 12 in', () => {
    const solid = solidOf({ solid: 'cylinder', sizes: { radius: 5, height: 12 } }, INCH);
    expectPrinted(solid.surfaceMm2 / INCH ** 2, [534, 0.5]);
    expectNear(solid.surfaceMm2 / INCH ** 2, 534.070751110265, NEAR);
    expectNear(solid.volumeMm3 / INCH ** 3, 942.477796076938, NEAR);
  });
});
