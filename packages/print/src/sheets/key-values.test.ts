// The answer key against worked examples that others published, and against the engine.

import type { ClassPi } from '@cairnmark/engine';
import type { CountingConvention, RulerId, SolidSpec } from '@cairnmark/geometry';
import { CATALOGUE, makeSolid, measureBuild, rulerOf } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { readyClass } from './for-tests.ts';
import { keyValues } from './key-values.ts';

function keyOf(
  spec: SolidSpec,
  {
    pi = 'key',
    counting = 'flat-and-curved-apart',
    ruler = 'mm',
  }: {
    readonly pi?: ClassPi;
    readonly counting?: CountingConvention;
    readonly ruler?: RulerId;
  } = {},
) {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return keyValues(spec, made.value, readyClass({ counting, ruler, own: { pi, closeShare: 0.05, rewards: [] } }));
}

const inch = (count: number): number => count * 25.4;

// OpenStax, Prealgebra 2e, section 9.6, examples 9.49, 9.51 and 9.53 to 9.56, which take 3.14 for pi and print two decimals
// at most. Sizes in inches or cm as printed; null: not asked there.
it.each([
  ['cube', { edge: inch(2.5) }, inch(1), 15.625, 37.5],
  ['sphere', { radius: inch(6) }, inch(1), 904.32, 452.16],
  ['cylinder', { radius: inch(3), height: inch(5) }, inch(1), 141.3, 150.72],
  ['cylinder', { radius: 40, height: 130 }, 10, 653.12, 427.04],
  ['cone', { radius: inch(2), height: inch(6) }, inch(1), 25.12, null],
  ['cone', { diameter: inch(5), height: inch(8) }, inch(1), 52.33, null],
] as const)('with 3.14 for pi the %s of %j is worked out as printed', (solid, sizes, unitMm, volume, surface) => {
  const key = keyOf({ solid, sizes }, { pi: '3.14' });
  // Half a hundredth, for the last printed digit.
  expectNear((key.volume?.value ?? 0) / unitMm ** 3, volume, { absolute: 0.005 });
  if (surface !== null) expectNear((key.surface?.value ?? 0) / unitMm ** 2, surface, { absolute: 0.005 });
});

describe('lengths', () => {
  it('the slant runs up the middle of a side, the longest edge where it is', () => {
    // Euclid's 5, 12, 13: half the base 5, height 12; the edge that slants is the root of 13² + 5².
    const pyramid = keyOf({ solid: 'regular-pyramid', sizes: { sides: 4, edge: 100, height: 120 } });
    expect(pyramid.slantsMm).toHaveLength(1);
    expectNear(pyramid.slantsMm[0] ?? 0, 130, { absolute: 1e-9 });
    expectNear(pyramid.longestEdgeMm ?? 0, Math.sqrt(130 ** 2 + 50 ** 2), { absolute: 1e-9 });
  });

  it('over a rectangle there are two slants', () => {
    // 180 x 64, 24 high: over 32 of the width 40, over 90 of the length the root of 90² + 24².
    const tent = keyOf({ solid: 'rectangular-pyramid', sizes: { length: 180, width: 64, height: 24 } });
    expect([...tent.slantsMm].sort((a, b) => a - b).map((mm) => mm.toFixed(6))).toEqual([
      '40.000000',
      Math.sqrt(90 ** 2 + 24 ** 2).toFixed(6),
    ]);
  });

  it('a ball and a cylinder have no straight edge', () => {
    const round = [
      { solid: 'sphere', sizes: { radius: 20 } },
      { solid: 'cylinder', sizes: { radius: 20, height: 70 } },
    ] as const;
    expect(round.map((spec) => keyOf(spec).longestEdgeMm)).toEqual([null, null]);
    expect(keyOf(round[1]).heightMm).toBe(70);
  });
});

it('counts as the class counts', () => {
  // A flash-card set has 0 edges and 1 vertex for a cone, a class 7 page 2 faces, 1 edge and 1 vertex.
  const cone: SolidSpec = { solid: 'cone', sizes: { radius: 30, height: 70 } };
  expect(keyOf(cone).counts).toEqual({ faces: 1, 'curved-surfaces': 1, edges: 0, corners: 1 });
  expect(keyOf(cone, { counting: 'all-surfaces' }).counts).toMatchObject({ faces: 2, edges: 1, corners: 1 });
  expect(keyOf(cone, { counting: 'flat-only' }).counts).toMatchObject({ faces: 1, edges: 0, corners: 0 });
});

describe.each(Object.values(CATALOGUE))('$id', ({ id, example }) => {
  it.each(['flat-only', 'flat-and-curved-apart', 'all-surfaces'] as const)(
    'is as the engine has it, %s',
    (counting) => {
      const spec: SolidSpec = { solid: id, sizes: example };
      const options = {
        counting,
        base: 'outline-of-pieces-on-table',
        gapAllowanceMm: 0.05,
        rulerStepMm: rulerOf('cm').stepMm,
      };
      const layout = { kind: 'numbers-only', pieces: ['it'] } as const;
      const measured = measureBuild(layout, new Map([['it', spec]]), {
        ...options,
        base: 'outline-of-pieces-on-table',
      });
      if (!measured.ok) throw new Error(JSON.stringify(measured.issues));
      const valueOf = (measure: string): number => {
        const fact = measured.value.facts.find((one) => one.id === measure);
        return fact?.status === 'measured' ? fact.value : Number.NaN;
      };
      const key = keyOf(spec, { counting, ruler: 'cm' });
      expect(key.counts).toEqual({
        faces: valueOf('faces'),
        'curved-surfaces': valueOf('curved-surfaces'),
        edges: valueOf('edges'),
        corners: valueOf('corners'),
      });
      // Of working out the same formula in another order.
      expectNear(key.volume?.value ?? 0, valueOf('volume'), { relative: 1e-12 });
      expectNear(key.surface?.value ?? 0, valueOf('paper'), { relative: 1e-12 });
    },
  );
});
