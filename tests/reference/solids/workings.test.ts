// The workings of every solid: each line gives its result from its inputs, lines lean only on sizes and lines above,
// and the last one is the number that the solid reports.

import type { Solid, Step, Unit } from '@cairnmark/geometry';
import { evaluate, num, over, PI, sym, times } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { expectNear } from '../../tools/within.ts';
import { DIMENSION, dimensionOf } from '../dimensions.ts';
import { onEverySolid, solidOf } from '../solid-cases.ts';

onEverySolid('every line follows from sizes and lines above it', { full: 100, part: 10 }, (solid) => {
  for (const steps of [solid.workings.volume, solid.workings.surface]) {
    const above = new Map<string, number>();
    for (const { symbol, formula, inputs, result } of steps) {
      const values = Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value]));
      const units = Object.fromEntries(Object.entries(inputs).map(([name, { unit }]) => [name, unit]));
      expect(evaluate(formula, values), symbol).toBe(result.value);
      expect(dimensionOf(formula, units), `dimension of ${symbol}`).toBe(DIMENSION[result.unit]);
      for (const [name, { value, unit }] of Object.entries(inputs)) {
        const known = above.has(name) ? [above.get(name)] : sizesIn(solid, unit);
        expect(known, `${name} in ${symbol}`).toContain(value);
      }
      above.set(symbol, result.value);
    }
  }
  expect(last(solid.workings.volume)).toMatchObject({ symbol: 'V', result: { value: solid.volumeMm3, unit: 'mm3' } });
  expect(last(solid.workings.surface)).toMatchObject({ symbol: 'S', result: { value: solid.surfaceMm2, unit: 'mm2' } });
});

describe('as a pupil would write it', () => {
  test('square pyramid, base edge 50, height 70: B = a^2, V = 1/3 x B x h', () => {
    const solid = solidOf({ solid: 'regular-pyramid', sizes: { sides: 4, edge: 50, height: 70 } });
    const [base, volume] = solid.workings.volume;
    expect(base!.formula).toEqual({ op: 'power', base: sym('a'), exponent: 2 });
    expect(base!.inputs).toEqual({ a: { value: 50, unit: 'mm' } });
    expect(base!.result).toEqual({ value: 2500, unit: 'mm2' });
    expect(volume!.formula).toEqual(times(over(num(1), num(3)), sym('B'), sym('h')));
    expect(volume!.inputs).toEqual({ B: { value: 2500, unit: 'mm2' }, h: { value: 70, unit: 'mm' } });
    expectNear(volume!.result.value, 175_000 / 3, { relative: 1e-15 });
  });

  test('a polygon is measured by its angle, so that a class with pi = 3.14 gets the same pentagon', () => {
    const solid = solidOf({ solid: 'regular-prism', sizes: { sides: 5, edge: 30, height: 70 } });
    const lines = [...solid.workings.volume, ...solid.workings.surface];
    expect(lines.filter(({ formula }) => JSON.stringify(formula).includes(JSON.stringify(PI)))).toEqual([]);
    expect(lines[0]!.inputs['t']).toEqual({ value: Math.PI / 5, unit: 'rad' });
  });
});

/** The sizes, and half the angle of one side where the solid has a regular polygon. */
function sizesIn({ sizes }: Solid, unit: Unit): readonly number[] {
  if (unit === 'rad') return [Math.PI / (sizes['sides'] ?? Number.NaN)];
  return Object.values(sizes);
}

const last = (steps: readonly Step[]): Step | undefined => steps.at(-1);
