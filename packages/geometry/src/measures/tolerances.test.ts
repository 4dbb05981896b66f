// Tolerances against REFERENCE section 5 (GUM check values, status C: computed apart from this code) and by hand.
// A ruler of 1 mm: u = 1 / sqrt(12) mm a reading; tolerances are 2 u. Lengths mm.

import { describe, expect, it } from 'vitest';
import {
  box,
  factsOf,
  kit,
  laid,
  PLAIN,
  put,
  toleranceIn,
  valueIn,
} from '../../../../tests/reference/measured-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { SolidSpec } from '../solids/types.ts';
import type { Layout } from '../stack/types.ts';

/**
 * Relative. Slopes are differences over 0.02 mm: the cubic term of a volume is (0.01 / 50)^2 = 4e-8 of it, the walking
 * grid of 1e-6 mm gives up to 1e-4 in outlines.
 */
const OF_SUMS = { relative: 1e-6 };
const OF_OUTLINES = { relative: 2e-4 };

const { hypot, PI, sqrt } = Math;
/** Standard uncertainty of one reading, mm. */
const U = 0.288675134595;

const alone = (spec: SolidSpec, resting = 'base') =>
  factsOf(laid(put('one', 0, 0, resting)), kit({ one: spec }), PLAIN);

describe('one piece, against the published check values', () => {
  it('rectangle 60 x 40: u_A = 20.8166599947, u_P = 0.816496580928', () => {
    const facts = alone(box(60, 40, 30));
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * 20.8166599947, OF_OUTLINES);
    expectNear(toleranceIn(facts, 'footprint-perimeter'), 2 * 0.816496580928, OF_OUTLINES);
  });

  it('cuboid 60 x 40 x 30: u_V = 932.737905309', () => {
    expectNear(toleranceIn(alone(box(60, 40, 30)), 'volume'), 2 * 932.737905309, OF_SUMS);
  });

  it('cube from one edge 50: u_V = 2165.06350946', () => {
    expectNear(toleranceIn(alone({ solid: 'cube', sizes: { edge: 50 } }), 'volume'), 2 * 2165.06350946, OF_SUMS);
  });

  it('three edges of 50 read apart: u_V = 1250', () => {
    expectNear(toleranceIn(alone(box(50, 50, 50)), 'volume'), 2 * 1250, OF_SUMS);
  });

  it('cylinder of diameter 60 and height 50: u_V = 1586.42652596', () => {
    const facts = alone({ solid: 'cylinder', sizes: { diameter: 60, height: 50 } });
    expectNear(valueIn(facts, 'volume'), 141371.669412, OF_SUMS);
    expectNear(toleranceIn(facts, 'volume'), 2 * 1586.42652596, OF_SUMS);
  });

  it('ball of diameter 60: u_V = 1632.41942781', () => {
    const facts = alone({ solid: 'sphere', sizes: { diameter: 60 } }, 'round');
    expectNear(valueIn(facts, 'volume'), 113097.335529, OF_SUMS);
    expectNear(toleranceIn(facts, 'volume'), 2 * 1632.41942781, OF_SUMS);
  });

  it('a radius is a reading of its own: half the diameter, so twice the tolerance', () => {
    const facts = alone({ solid: 'sphere', sizes: { radius: 30 } }, 'round');
    expectNear(toleranceIn(facts, 'volume'), 2 * 2 * 1632.41942781, OF_SUMS);
  });
});

describe('stacks and rows', () => {
  const cubes = kit({
    a: { solid: 'cube', sizes: { edge: 50 } },
    b: { solid: 'cube', sizes: { edge: 43 } },
    c: { solid: 'cube', sizes: { edge: 37 } },
    d: { solid: 'cube', sizes: { edge: 29 } },
    e: { solid: 'cube', sizes: { edge: 23 } },
  });
  const tower = (...kinds: readonly string[]) => factsOf(laid(...kinds.map((kind) => put(kind, 0, 0))), cubes, PLAIN);

  it('five different heights: sqrt(5) u = 0.645497224368', () => {
    expectNear(toleranceIn(tower('a', 'b', 'c', 'd', 'e'), 'height'), 2 * 0.645497224368, OF_SUMS);
  });

  it('five equal cubes: one reading used five times, 5 u', () => {
    expectNear(toleranceIn(tower('a', 'a', 'a', 'a', 'a'), 'height'), 2 * 5 * U, OF_SUMS);
  });

  it('two of one and three of another: hypot(2, 3) u', () => {
    expectNear(toleranceIn(tower('a', 'b', 'b', 'a', 'b'), 'height'), 2 * hypot(2, 3) * U, OF_SUMS);
  });

  it('five equal cubes in a row keep touching: the row is 5 a long, A = 5 a^2, P = 12 a', () => {
    const row = laid(...[2, 0, 1, 4, 3].map((place) => put('a', 50 * place, 0)));
    const facts = factsOf(row, cubes, PLAIN);
    expectNear(toleranceIn(facts, 'footprint-perimeter'), 2 * 12 * U, OF_OUTLINES);
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * 10 * 50 * U, OF_OUTLINES);
    expectNear(toleranceIn(facts, 'hull-area'), 2 * 10 * 50 * U, OF_OUTLINES);
    // 5 x 6 a^2 less 2 x 4 contacts less 5 on the table: 17 a^2.
    expectNear(toleranceIn(facts, 'touchable-surface'), 2 * 34 * 50 * U, OF_OUTLINES);
  });

  it('the same row turned by 0.3 rad', () => {
    const [c, s] = [Math.cos(0.3), Math.sin(0.3)];
    const row = laid(...[0, 1, 2, 3, 4].map((place) => put('a', 50 * place * c, 50 * place * s, 'base', 0.3)));
    const facts = factsOf(row, cubes, PLAIN);
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * 10 * 50 * U, OF_OUTLINES);
  });

  it('a row of two kinds: lengths 2 a and 1 b, each for itself', () => {
    const row = laid(put('a', 0, 0), put('b', 46.5, 0), put('a', 93, 0));
    // A = 2 a^2 + b^2: slopes 4 a and 2 b.
    expectNear(toleranceIn(factsOf(row, cubes, PLAIN), 'footprint-area'), 2 * hypot(4 * 50, 2 * 43) * U, OF_OUTLINES);
  });

  it('a long row moves little enough not to run into what stands a fifth of a millimetre from its end', () => {
    const row = laid(...Array.from({ length: 60 }, (_, place) => put('a', 50 * place, 0)), put('b', 59 * 50 + 46.7, 0));
    const facts = factsOf(row, cubes, PLAIN);
    expect(valueIn(facts, 'footprint-parts')).toBe(2);
    expectNear(toleranceIn(facts, 'height'), 2 * U, OF_SUMS);
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * hypot(60 * 2 * 50, 2 * 43) * U, OF_OUTLINES);
  });

  it('a drum beside a cube, touching along a line, is pushed along', () => {
    const kinds = kit({
      cube: { solid: 'cube', sizes: { edge: 50 } },
      drum: { solid: 'cylinder', sizes: { radius: 20, height: 70 } },
    });
    const facts = factsOf(laid(put('cube', 0, 0), put('drum', 45, 7)), kinds, PLAIN);
    // A = a^2 + pi r^2, P = 4 a + 2 pi r, whatever each of them measures.
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * hypot(2 * 50, 2 * PI * 20) * U, OF_OUTLINES);
    expectNear(toleranceIn(facts, 'footprint-perimeter'), 2 * hypot(4, 2 * PI) * U, OF_OUTLINES);
  });

  it('a ring of walls: the courtyard follows what stands between its walls', () => {
    const kinds = kit({ long: box(100, 12, 30), short: box(12, 56, 30) });
    const ring = laid(put('long', 0, -34), put('long', 0, 34), put('short', -44, 0), put('short', 44, 0));
    // Courtyard = (88 - thickness of the short walls) x their length: the places of the short walls along x are laid.
    expectNear(toleranceIn(factsOf(ring, kinds, PLAIN), 'courtyard-area'), 2 * hypot(76, 56) * U, OF_OUTLINES);
  });

  it('a gap just as wide as the allowance stays closed: no jump is taken for a slope', () => {
    const pair = laid(put('a', 0, 0), put('a', 52, 0));
    const facts = factsOf(pair, cubes, { ...PLAIN, gapAllowanceMm: 2 });
    expect(valueIn(facts, 'footprint-parts')).toBe(1);
    // P = 8 a - 2 a + 2 g with g = 52 - a: slope 4.
    expectNear(toleranceIn(facts, 'footprint-perimeter'), 2 * 4 * U, OF_OUTLINES);
  });
});

describe('what a reading is', () => {
  it('the number of sides is counted, not read: u_V of a prism comes from edge and height', () => {
    const facts = alone({ solid: 'regular-prism', sizes: { sides: 6, edge: 4, height: 10 } });
    // V = 415.692193816531 (REFERENCE 1.1): slopes 2 V / edge and V / height.
    const volume = 415.692193816531;
    // Cubic term: (0.01 / 4)^2 of it.
    expectNear(toleranceIn(facts, 'volume'), 2 * hypot((2 * volume) / 4, volume / 10) * U, { relative: 1e-5 });
  });

  it('a kind in the kit that was not used adds nothing', () => {
    const kinds = kit({ one: box(60, 40, 30), other: box(500, 500, 500) });
    const facts = factsOf(laid(put('one', 0, 0)), kinds, PLAIN);
    expectNear(toleranceIn(facts, 'volume'), 2 * 932.737905309, OF_SUMS);
  });

  it('counts have no tolerance', () => {
    const facts = alone(box(60, 40, 30));
    for (const fact of facts.values()) {
      if (fact.unit === 'count') expect(fact).toMatchObject({ tolerance: 0 });
    }
  });

  it('a coarser ruler: tolerances in proportion', () => {
    const kinds = kit({ one: box(60, 40, 30) });
    const facts = factsOf(laid(put('one', 0, 0)), kinds, { ...PLAIN, rulerStepMm: 5 });
    expectNear(toleranceIn(facts, 'height'), 2 * 1.44337567297, OF_SUMS);
  });

  it('at the limit of what is possible the slope is taken to one side', () => {
    // Sides must close by at least 0.1: 30 + 40 - 69.895 does, a nudge of 0.01 is impossible one way.
    const spec: SolidSpec = { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 69.895, height: 70 } };
    const facts = factsOf({ kind: 'numbers-only', pieces: ['one'] }, kit({ one: spec }), PLAIN);
    // Heron, d(area)/dc to the lower side over 0.01, hand in hand with the two other sides; all steep, none missing.
    const area = (a: number, b: number, c: number): number => {
      const s = (a + b + c) / 2;
      return sqrt(s * (s - a) * (s - b) * (s - c));
    };
    const here = area(30, 40, 69.895);
    const slopes = [
      (area(30.01, 40, 69.895) - here) / 0.01,
      (area(30, 40.01, 69.895) - here) / 0.01,
      (here - area(30, 40, 69.885)) / 0.01,
      here / 70,
    ];
    expectNear(toleranceIn(facts, 'volume'), 2 * 70 * hypot(...slopes) * U, { relative: 1e-4 });
  });
});

describe('layouts that are not laid out', () => {
  const kinds = kit({ brick: box(60, 40, 30) });

  it('numbers only: sums have their tolerance', () => {
    const facts = factsOf({ kind: 'numbers-only', pieces: ['brick', 'brick', 'brick'] }, kinds, PLAIN);
    expectNear(toleranceIn(facts, 'volume'), 3 * 2 * 932.737905309, OF_SUMS);
  });

  it('traced: the height is one reading, the edge of each outline another', () => {
    const outline = {
      kind: 'polygon',
      points: [
        [0, 0],
        [70, 0],
        [70, 30],
        [0, 30],
      ],
    } as const;
    const disc = { kind: 'disc', centre: [200, 0], radiusMm: 25 } as const;
    const traced: Layout = {
      kind: 'traced',
      outlines: [outline, disc].map((each) => ({ outline: each, planeMm: 0, onTable: true })),
      pieces: [],
      heightMm: 215,
    };
    const facts = factsOf(traced, kinds, PLAIN);
    expectNear(toleranceIn(facts, 'height'), 2 * U, OF_SUMS);
    // The area grows by the perimeter, 200 and 50 pi; the perimeter by 8 and 2 pi.
    expectNear(toleranceIn(facts, 'footprint-area'), 2 * hypot(200, 50 * PI) * U, OF_OUTLINES);
    expectNear(toleranceIn(facts, 'footprint-perimeter'), 2 * hypot(8, 2 * PI) * U, OF_OUTLINES);
  });
});
