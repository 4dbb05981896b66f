import type { Sizes, SolidId } from '@cairnmark/geometry';
import { CATALOGUE, makeSolid } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshSeed } from '../../../../../tests/tools/share.ts';
import { measuredBy, shownBy, sizeBy, waysOf } from './ways.ts';

const seed = freshSeed('other ways to measure');
/** No unit. Two ways through a square root in doubles. */
const ROUNDING = 1e-9;

const own = (solid: SolidId, sizes: Sizes): Sizes => {
  const made = makeSolid({ solid, sizes });
  if (!made.ok) throw new RangeError(JSON.stringify(made.issues));
  return made.value.sizes;
};

describe('other ways to measure', () => {
  it.each(Object.values(CATALOGUE))(
    'of a $id agree with what geometry makes of such a size',
    ({ id, example, fields }) => {
      const known = new Set(fields.flatMap(({ otherwise }) => otherwise));
      const ways = waysOf({ solid: id, sizes: example });
      const names = new Set<string>(ways.map(({ name }) => name));
      expect([...known].filter((name) => !names.has(name))).toEqual([]);
      const sizes = own(id, example);
      for (const way of ways.filter(({ name }) => known.has(name))) {
        const { [way.of]: size, ...others } = sizes;
        const again = own(id, { ...others, [way.name]: shownBy(way, sizes) });
        expect(Math.abs((again[way.of] ?? 0) / (size ?? 1) - 1), way.name).toBeLessThan(ROUNDING);
      }
    },
  );

  it('the slant edge of a pyramid goes from a corner of its base to its tip', () => {
    // A square of side 60: its corner lies 30 √2 from the middle.
    const [edge] = waysOf({ solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 70 } }).filter(
      ({ name }) => name === 'slantEdge',
    );
    const shownMm = edge === undefined ? 0 : shownBy(edge, { height: 70 });
    expect(Math.abs(shownMm / Math.sqrt(4900 + 1800) - 1)).toBeLessThan(ROUNDING);
    const oblong = waysOf({ solid: 'rectangular-pyramid', sizes: { length: 60, width: 80, height: 120 } });
    expect(oblong.map((way) => [way.name, shownBy(way, { height: 120 })])).toEqual([
      ['slantLength', Math.hypot(120, 40)],
      ['slantWidth', Math.hypot(120, 30)],
      ['slantEdge', 130],
    ]);
  });

  it('a size keeps the name it was written under', () => {
    const cone = { solid: 'cone', sizes: { diameter: 60, height: 40 } } as const;
    const [, around] = waysOf(cone);
    expect(around?.name).toBe('circumference');
    expect(around === undefined ? {} : measuredBy(cone, around, 50 * Math.PI)).toEqual({ diameter: 50, height: 40 });
    const slope = waysOf(cone).find(({ name }) => name === 'slant');
    expect(slope === undefined ? {} : measuredBy(cone, slope, 50)).toEqual({ diameter: 60, height: 40 });
    const slanted = { solid: 'cone', sizes: { radius: 30, slant: 50 } } as const;
    const again = waysOf(slanted).find(({ name }) => name === 'slant');
    expect(again === undefined ? {} : measuredBy(slanted, again, 78)).toEqual({ radius: 30, slant: 78 });
  });

  it(`a slope that is long enough gives a height, and its own length back (seed ${seed})`, () => {
    const lengths = fc.double({ min: 0.2, max: 3000, noNaN: true });
    fc.assert(
      fc.property(lengths, lengths, fc.integer({ min: 3, max: 12 }), lengths, (edge, height, sides, more) => {
        const spec = { solid: 'regular-pyramid', sizes: { sides, edge, height } } as const;
        for (const way of waysOf(spec).filter(({ kind }) => kind === 'slope')) {
          const slopeMm = (way.kind === 'slope' ? way.runMm : 0) + more;
          const sizes = measuredBy(spec, way, slopeMm);
          expect(sizes['height']).toBeLessThan(slopeMm);
          expect(Math.abs(shownBy(way, sizes) / slopeMm - 1)).toBeLessThan(ROUNDING);
        }
      }),
      { seed, numRuns: 200 },
    );
  });

  it('a slope that is too short to reach over the base gives no height', () => {
    const cone = { solid: 'cone', sizes: { radius: 30, height: 40 } } as const;
    const [slant] = waysOf(cone).filter(({ name }) => name === 'slant');
    expect(slant === undefined ? 0 : sizeBy(cone, slant, 29)).toBeNaN();
  });
});
