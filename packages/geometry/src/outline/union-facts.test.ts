// Unions against closed forms and values worked out elsewhere; the source of each stands beside it in union-figures.ts.

import { describe, expect, it } from 'vitest';
import { box, disc, moved, ngon, polygon, shift } from '../../../../tests/reference/outline-shapes.ts';
import { UNION_FIGURES } from '../../../../tests/reference/union-figures.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import { unionFacts } from './union-facts.ts';
import { unionLoops } from './union-loops.ts';

const EXACT = { contactMm: 0, gapAllowanceMm: 0 };
const CONTACT = { contactMm: CONTACT_MM, gapAllowanceMm: CONTACT_MM };
/** Values are given to 15 digits. */
const DIGITS = { relative: 1e-12 };
/** Lengths where an expected value is 0. */
const NOTHING = { absolute: 1e-12 };

describe('known figures', () => {
  it.each(UNION_FIGURES)('$name ($source)', ({ outlines, area, outer, inner }) => {
    const facts = unionFacts(outlines, EXACT);
    expectNear(facts.areaMm2, area, DIGITS, 'area');
    expectNear(facts.outerPerimeterMm, outer, DIGITS, 'outer perimeter');
    expectNear(facts.innerPerimeterMm, inner, inner === 0 ? NOTHING : DIGITS, 'inner perimeter');
    expect(facts.holes).toBe(inner === 0 ? 0 : 1);
    expect(facts.gaps).toEqual([]);
  });

  it.each(UNION_FIGURES)('ten times as large, with contacts of 0.05 mm: $name', ({ outlines, area, outer, inner }) => {
    const larger = outlines.map((one) => moved(one, ([x, y]) => [10 * x, 10 * y]));
    const grown = larger.map((one) => (one.kind === 'disc' ? { ...one, radiusMm: 10 * one.radiusMm } : one));
    const facts = unionFacts(grown, CONTACT);
    expectNear(facts.areaMm2, 100 * area, DIGITS, 'area');
    expectNear(facts.outerPerimeterMm, 10 * outer, DIGITS, 'outer perimeter');
    expectNear(facts.innerPerimeterMm, 10 * inner, inner === 0 ? NOTHING : DIGITS, 'inner perimeter');
  });
});

describe('courtyards', () => {
  it('of four walls is what they enclose', () => {
    const walls = [box(0, 0, 10, 1), box(0, 7, 10, 1), box(0, 1, 1, 6), box(9, 1, 1, 6)];
    expectNear(unionFacts(walls, EXACT).courtyardMm2, 48, DIGITS);
  });

  it('of six tangent discs is a hexagon less two discs', () => {
    const discs = Array.from({ length: 6 }, (_, k) =>
      disc(10 * Math.cos((k * Math.PI) / 3), 10 * Math.sin((k * Math.PI) / 3), 5),
    );
    const facts = unionFacts(discs, EXACT);
    expectNear(facts.courtyardMm2, 150 * Math.sqrt(3) - 50 * Math.PI, DIGITS);
    expect(facts.parts).toBe(1);
  });

  it('are counted one by one', () => {
    const bars = [0, 10, 20, 30].flatMap((at) => [box(at, 0, 3, 33), box(0, at, 33, 3)]);
    const facts = unionFacts(bars, EXACT);
    expect(facts.holes).toBe(9);
    expectNear(facts.courtyardMm2, 9 * 49, DIGITS);
    expectNear(facts.innerPerimeterMm, 9 * 28, DIGITS);
  });

  it('may hold an island, which is a part of its own', () => {
    const walls = [box(0, 0, 50, 5), box(0, 35, 50, 5), box(0, 0, 5, 40), box(45, 0, 5, 40)];
    const facts = unionFacts([...walls, box(20, 10, 7, 11)], EXACT);
    expect([facts.parts, facts.holes]).toEqual([2, 1]);
    expectNear(facts.courtyardMm2, 40 * 30, DIGITS, 'the island is not taken off the courtyard');
    expectNear(facts.outerPerimeterMm, 180 + 36, DIGITS);
  });
});

describe('parts', () => {
  it('at a corner, along a side, and apart', () => {
    const one = box(0, 0, 30, 20);
    const parts = (dx: number, dy: number): number => unionFacts([one, moved(one, shift(dx, dy))], EXACT).parts;
    expect([parts(30, 20), parts(30, 7), parts(31, 7), parts(30, 21)]).toEqual([1, 1, 2, 2]);
  });

  it('of a disc and a diamond whose boxes overlap, though they do not', () => {
    expect(unionFacts([disc(0, 0, 10), ngon(12, 12, 8, 4, 0)], EXACT).parts).toBe(2);
    expect(unionFacts([disc(0, 0, 12), ngon(12, 12, 8, 4, 0)], EXACT).parts).toBe(1);
  });

  it('of discs that touch inside and outside', () => {
    expect(unionFacts([disc(0, 0, 5), disc(8, 0, 3)], EXACT).parts).toBe(1);
    expect(unionFacts([disc(0, 0, 5), disc(2, 0, 3)], EXACT).parts).toBe(1);
    expect(unionFacts([disc(0, 0, 5), disc(8.001, 0, 3)], EXACT).parts).toBe(2);
  });
});

describe('what adds nothing', () => {
  it('no outlines, points, lines, discs of no size', () => {
    const nothing = [
      polygon([]),
      polygon([[3, 5]]),
      polygon([
        [0, 0],
        [7, 3],
      ]),
      polygon([
        [1, 1],
        [1, 1],
        [1, 1],
      ]),
      disc(9, 9, 0),
    ];
    for (const outlines of [[], nothing]) {
      expect(unionFacts(outlines, CONTACT)).toEqual({
        areaMm2: 0,
        outerPerimeterMm: 0,
        innerPerimeterMm: 0,
        parts: 0,
        holes: 0,
        courtyardMm2: 0,
        gaps: [],
      });
    }
  });

  it('a coordinate that is not finite is a mistake of the caller', () => {
    expect(() => unionFacts([disc(Number.NaN, 0, 5)], CONTACT)).toThrow(RangeError);
    expect(() => unionFacts([box(0, 0, Number.POSITIVE_INFINITY, 5)], CONTACT)).toThrow(RangeError);
  });
});

it('the loops that are drawn go where the facts were measured', () => {
  const loops = unionLoops([box(100, 0, 30, 20), disc(130, 10, 5)], EXACT);
  const [loop] = loops;
  expect([loops.length, loop?.isHole]).toEqual([1, false]);
  const kinds = loop?.parts.map((part) => part.kind).sort();
  expect(kinds).toEqual(['arc', 'arc', 'line', 'line', 'line', 'line', 'line']);
  const arc = loop?.parts.find((part) => part.kind === 'arc');
  expect(arc?.kind === 'arc' && [arc.centre, arc.radiusMm]).toEqual([[130, 10], 5]);
});
