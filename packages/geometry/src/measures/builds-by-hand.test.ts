// Walls, gates, rings, balls and overhangs measured by hand. The hand calculation stands beside each; lengths mm.

import { describe, expect, it } from 'vitest';
import {
  box,
  expectFacts,
  factsOf,
  kit,
  laid,
  measuredFact,
  PLAIN,
  put,
} from '../../../../tests/reference/measured-builds.ts';
import { measureBuild } from './measure-build.ts';

const { PI, sqrt } = Math;

describe('box beside box', () => {
  const kinds = kit({ brick: box(60, 40, 30) });
  const two = (apartMm: number) => laid(put('brick', 0, 0), put('brick', 60 + apartMm, 0));
  const surface = 2 * 2 * (60 * 40 + 60 * 30 + 40 * 30);

  it('is one part whose touching sides drop', () => {
    expectFacts(factsOf(two(0), kinds, PLAIN), {
      height: 30,
      'footprint-area': 120 * 40,
      'footprint-perimeter': 2 * (120 + 40),
      'footprint-parts': 1,
      'hull-area': 120 * 40,
      'touchable-surface': surface - 2 * 40 * 30 - 120 * 40,
      pieces: 2,
      kinds: 1,
    });
  });

  it('is two parts when 1.5 mm apart and no gap is closed', () => {
    const facts = factsOf(two(1.5), kinds, PLAIN);
    expectFacts(facts, {
      'footprint-area': 2 * 60 * 40,
      'footprint-perimeter': 2 * 2 * (60 + 40),
      'footprint-parts': 2,
      'hull-area': 121.5 * 40,
      'touchable-surface': surface - 2 * 60 * 40,
    });
  });

  it('is one part again when gaps up to 2 mm are closed, and says where; areas stay', () => {
    const options = { ...PLAIN, gapAllowanceMm: 2 };
    const measured = measureBuild(two(1.5), kinds, options);
    if (!measured.ok) throw new Error('refused');
    const facts = new Map(measured.value.facts.map((fact) => [fact.id, fact]));
    // Both facing sides of 40 drop; each of the two mouths counts as a straight line of 1.5.
    const perimeter = 2 * 2 * (60 + 40) - 2 * 40 + 2 * 1.5;
    expectFacts(facts, {
      'footprint-area': 2 * 60 * 40,
      'footprint-perimeter': perimeter,
      'base-perimeter': perimeter,
      'footprint-parts': 1,
    });
    // Footprint and base have the same gap: it is told once.
    expect(measured.value.gaps).toHaveLength(1);
    for (const { at, widthMm } of measured.value.gaps) {
      expect(Math.abs(widthMm - 1.5)).toBeLessThanOrEqual(1e-5);
      expect(at[0]).toBeGreaterThanOrEqual(30 - 1e-5);
      expect(at[0]).toBeLessThanOrEqual(31.5 + 1e-5);
      expect(Math.abs(at[1])).toBeLessThanOrEqual(20 + 1e-5);
    }
  });
});

describe('a lintel on two pillars', () => {
  const kinds = kit({ pillar: box(20, 30, 50), lintel: box(120, 25, 15) });
  const gate = laid(put('pillar', -40, 0), put('pillar', 40, 0), put('lintel', 0, 0));

  it('is measured from above and on the table', () => {
    const facts = factsOf(gate, kinds, PLAIN);
    expectFacts(facts, {
      height: 50 + 15,
      // The pillars stand out by 2.5 on both sides of the lintel: 4 strips of 20 x 2.5, 8 steps of 2.5.
      'footprint-area': 120 * 25 + 4 * 20 * 2.5,
      'footprint-perimeter': 2 * (120 + 25) + 8 * 2.5,
      'footprint-parts': 1,
      // Hull: 100 x 30 in the middle, and on both ends a trapezium of width 10 between 30 and 25.
      'hull-area': 100 * 30 + (2 * 10 * (30 + 25)) / 2,
      'base-area': 2 * 20 * 30,
      'base-perimeter': 2 * 2 * (20 + 30),
      'touchable-surface':
        2 * 2 * (20 * 30 + 20 * 50 + 30 * 50) + 2 * (120 * 25 + 120 * 15 + 25 * 15) - 2 * 2 * 20 * 25 - 2 * 20 * 30,
    });
    expect(measuredFact(facts, 'height').working.parts.map(({ kind }) => kind)).toEqual(['pillar', 'lintel']);
  });

  it('stands on two patches, or on the hull round them', () => {
    expectFacts(factsOf(gate, kinds, { ...PLAIN, base: 'contact-patches' }), {
      'base-area': 2 * 20 * 30,
      'base-perimeter': 2 * 2 * (20 + 30),
    });
    expectFacts(factsOf(gate, kinds, { ...PLAIN, base: 'hull-of-contacts' }), {
      'base-area': 100 * 30,
      'base-perimeter': 2 * (100 + 30),
    });
  });

  it('tells of a gap in the base that a roof hides', () => {
    const roofed = kit({ pillar: box(20, 30, 50), roof: box(120, 44, 15) });
    const close = laid(put('pillar', -11, 0), put('pillar', 10, 0), put('roof', 0, 0));
    const measured = measureBuild(close, roofed, { ...PLAIN, gapAllowanceMm: 2 });
    if (!measured.ok) throw new Error('refused');
    const facts = new Map(measured.value.facts.map((fact) => [fact.id, fact]));
    expectFacts(facts, {
      'base-perimeter': 2 * 2 * (20 + 30) - 2 * 30 + 2 * 1,
      'footprint-perimeter': 2 * (120 + 44),
    });
    expect(measured.value.gaps).toHaveLength(1);
  });

  it('is as high as its highest piece, which need not be the one laid highest', () => {
    const mixed = kit({ pillar: box(20, 30, 50), lintel: box(120, 25, 15), mast: box(9, 7, 130) });
    const facts = factsOf(laid(...gate.pieces, put('mast', 0, 70)), mixed, PLAIN);
    expectFacts(facts, { height: 130 });
    expect(measuredFact(facts, 'height').working.parts.map(({ kind }) => kind)).toEqual(['mast']);
  });
});

describe('a ring fort of four walls', () => {
  const kinds = kit({ long: box(100, 12, 30), short: box(12, 56, 30) });
  const ring = laid(put('long', 0, -34), put('long', 0, 34), put('short', -44, 0), put('short', 44, 0));

  it('encloses a courtyard', () => {
    expectFacts(factsOf(ring, kinds, PLAIN), {
      height: 30,
      'footprint-area': 100 * 80 - 76 * 56,
      'footprint-perimeter': 2 * (100 + 80),
      'footprint-inner-perimeter': 2 * (76 + 56),
      'footprint-parts': 1,
      'courtyard-area': 76 * 56,
      'hull-area': 100 * 80,
      'base-area': 100 * 80 - 76 * 56,
      'base-perimeter': 2 * (100 + 80),
      'touchable-surface':
        2 * 2 * (100 * 12 + 100 * 30 + 12 * 30) +
        2 * 2 * (12 * 56 + 12 * 30 + 56 * 30) -
        2 * 4 * 12 * 30 -
        (100 * 80 - 76 * 56),
      kinds: 2,
    });
  });
});

describe('a ball', () => {
  const kinds = kit({
    ball: { solid: 'sphere', sizes: { radius: 17 } },
    box: box(50, 44, 36),
    big: { solid: 'sphere', sizes: { radius: 26 } },
    cube: { solid: 'cube', sizes: { edge: 40 } },
    drum: { solid: 'cylinder', sizes: { radius: 15, height: 70 } },
  });

  it('on a box takes nothing from the surface', () => {
    const facts = factsOf(laid(put('box', 0, 0), put('ball', 4, 3, 'round')), kinds, PLAIN);
    expectFacts(facts, {
      height: 36 + 34,
      'touchable-surface': 2 * (50 * 44 + 50 * 36 + 44 * 36) + 4 * PI * 17 ** 2 - 50 * 44,
      'base-area': 50 * 44,
    });
  });

  it('between two cubes sinks in: the highest point is shown, not a sum', () => {
    // Upper inner edges at x = -10 and 10, z = 40; centre at 40 + sqrt(26^2 - 10^2) = 64.
    const facts = factsOf(laid(put('cube', -30, 0), put('cube', 30, 0), put('big', 0, 0, 'round')), kinds, PLAIN);
    expectFacts(facts, { height: 64 + 26 });
    const { working } = measuredFact(facts, 'height');
    expect(working.method).toBe('highest-point');
    const [part, ...others] = working.parts;
    expect(others).toEqual([]);
    expect(part).toMatchObject({ kind: 'big', times: 1, unit: 'mm' });
    // The diameter, to rounding.
    expect(Math.abs((part?.each ?? 0) - 52)).toBeLessThanOrEqual(1e-12);
  });

  it('on the table: its outline has an area, its contact has none', () => {
    const one = laid(put('ball', 0, 0, 'round'));
    expectFacts(factsOf(one, kinds, PLAIN), { 'base-area': PI * 17 ** 2, 'base-perimeter': 2 * PI * 17 });
    for (const base of ['contact-patches', 'hull-of-contacts'] as const) {
      expectFacts(factsOf(one, kinds, { ...PLAIN, base }), { 'base-area': 0, 'base-perimeter': 0 });
    }
  });

  it('and a drum on its side: the hull is over a line and a point', () => {
    // The drum (axis along y) touches along x = 0 from y = -35 to 35, the ball at (48, 0): a triangle.
    const both = laid(put('drum', 0, 0, 'side'), put('ball', 48, 0, 'round'));
    const facts = factsOf(both, kinds, { ...PLAIN, base: 'hull-of-contacts' });
    expectFacts(facts, { 'base-area': (70 * 48) / 2, 'base-perimeter': 70 + 2 * sqrt(48 ** 2 + 35 ** 2) });
    expectFacts(factsOf(both, kinds, { ...PLAIN, base: 'contact-patches' }), { 'base-area': 0, 'base-perimeter': 0 });
  });
});

describe('pieces on their way up a tower that overhangs', () => {
  it('a cantilever shows in the footprint and not in the base', () => {
    const kinds = kit({ foot: box(30, 20, 10), beam: box(90, 14, 8) });
    const facts = factsOf(laid(put('foot', 0, 0), put('beam', 25, 0)), kinds, PLAIN);
    // The beam covers x = -20 to 70, y = -7 to 7; of the foot two strips of 30 x 3 show beside it.
    expectFacts(facts, {
      height: 18,
      'footprint-area': 90 * 14 + 2 * 30 * 3,
      'base-area': 30 * 20,
      'base-perimeter': 2 * (30 + 20),
    });
  });
});
