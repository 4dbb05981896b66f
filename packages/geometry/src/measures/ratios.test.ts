// Base width and the three ratios against figures worked out by hand. Lengths mm.

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
  toleranceIn,
  valueIn,
} from '../../../../tests/reference/measured-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Layout } from '../stack/types.ts';

const { hypot, PI, sqrt } = Math;
/** Standard uncertainty of one reading on a ruler of 1 mm. */
const U = 0.288675134595;
/** Relative; slopes are differences over 0.02 mm, and outlines are walked on a grid of 1e-6 mm. */
const SLOPES = { relative: 2e-4 };
const STEPS = [0, 0.3, 1.1, PI / 2];

describe('base width', () => {
  const kinds = kit({
    brick: box(70, 30, 50),
    roof: box(190, 170, 10),
    drum: { solid: 'cylinder', sizes: { radius: 15, height: 70 } },
    wedge: { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } },
    hexagon: { solid: 'regular-prism', sizes: { sides: 6, edge: 30, height: 20 } },
    pentagon: { solid: 'regular-prism', sizes: { sides: 5, edge: 30, height: 20 } },
    cone: { solid: 'cone', sizes: { radius: 30, height: 40 } },
    ball: { solid: 'sphere', sizes: { radius: 17 } },
  });
  const widthOf = (layout: Layout, options = PLAIN) => valueIn(factsOf(layout, kinds, options), 'base-width');

  it.each([
    ['brick', 30],
    ['drum', 30], // its diameter
    ['wedge', 24], // the altitude on the longest side: 30 x 40 / 50
    ['hexagon', 30 * sqrt(3)], // across the flats
    ['pentagon', (30 * sqrt(5 + 2 * sqrt(5))) / 2], // the height of the pentagon
  ])('of one %s is %d, however it is turned', (kind, width) => {
    for (const turnRad of STEPS) expectNear(widthOf(laid(put(kind, 7, 3, 'base', turnRad))), width, { relative: 1e-9 });
  });

  it('of a cone on its side: the shadow is a triangle on half an ellipse, narrowest across its axis', () => {
    // Across the axis the base disc shows its whole diameter, 60. Along it, from the apex to the far rim: the side of
    // 50 lies on the table, and the disc, tilted by acos(30 / 50), ends at 50. So 50 along, and less aslant. The widths
    // at 4 000 directions of the true support function, half ellipse of 30 across and 24 along about (32, 0), apex (0, 0):
    // the far end of the disc is at 50, the near one at 50 - 2 x 30 x 30 / 50 = 14.
    const support = (t: number) => Math.max(0, 32 * Math.cos(t) + hypot(18 * Math.cos(t), 30 * Math.sin(t)));
    const widths = Array.from({ length: 200_000 }, (_, k) => {
      const t = (k * PI) / 200_000;
      return support(t) + support(t + PI);
    });
    expectNear(widthOf(laid(put('cone', 0, 0, 'side'))), Math.min(...widths), { relative: 2e-6 });
  });

  it('of two drums: across both, whatever stands between their centres', () => {
    expectNear(widthOf(laid(put('drum', 0, 0), put('drum', 48, 55))), 30, { relative: 1e-9 });
  });

  it('of a drum and a brick: from the long side of the brick to the rim of the drum', () => {
    // The brick spans y = -15 to 15, the drum (3, 40) reaches to y = 55; aslant it is wider.
    expectNear(widthOf(laid(put('brick', 0, 0), put('drum', 3, 40))), 70, { relative: 1e-9 });
    const support = (t: number) =>
      Math.max(35 * Math.abs(Math.cos(t)) + 15 * Math.abs(Math.sin(t)), 3 * Math.cos(t) + 40 * Math.sin(t) + 15);
    const widths = Array.from({ length: 20_000 }, (_, k) => {
      const t = (k * PI) / 20_000;
      return support(t) + support(t + PI);
    });
    expectNear(Math.min(...widths), 70, { absolute: 1e-4 });
  });

  it('is of what touches the table, by the definition of the challenge', () => {
    const roofed = laid(put('brick', -50, 0), put('brick', 50, 20), put('roof', 0, 0));
    // Bricks from (-85, -15) to (85, 35): the hull is narrowest between the slanted sides or along y. Slanted side from
    // (-15, -15) to (85, 5): normal (-1, 5) / sqrt(26); farthest (-85, 15) on the other side.
    const aslant = (-1 * (-85 - -15) + 5 * (15 - -15)) / sqrt(26);
    expectNear(widthOf(roofed), Math.min(50, aslant), { relative: 1e-9 });
    const onBall = laid(put('ball', 0, 0, 'round'));
    expectNear(widthOf(onBall), 34, { relative: 1e-9 });
    expect(widthOf(onBall, { ...PLAIN, base: 'contact-patches' })).toBe(0);
    expect(widthOf(onBall, { ...PLAIN, base: 'hull-of-contacts' })).toBe(0);
    for (const turnRad of STEPS) {
      const drum = laid(put('drum', 3, 5, 'side', turnRad));
      expect(widthOf(drum, { ...PLAIN, base: 'hull-of-contacts' })).toBe(0);
    }
  });

  it('has the tolerance of the width alone', () => {
    const facts = factsOf(laid(put('brick', 0, 0)), kinds, PLAIN);
    expectNear(toleranceIn(facts, 'base-width'), 2 * U, SLOPES);
  });
});

describe('ratios', () => {
  const kinds = kit({ brick: box(70, 30, 50), ball: { solid: 'sphere', sizes: { radius: 17 } } });
  const facts = factsOf(laid(put('brick', 0, 0), put('brick', 0, 0)), kinds, PLAIN);

  it('of two bricks of 70 x 30 x 50, one on the other', () => {
    expectFacts(facts, {
      'height-to-width': 100 / 30,
      // 105 000 / (2 x (2 100 + 3 500 + 1 500))
      'volume-per-paper': 105_000 / 14_200,
      'area-to-perimeter': 2100 / 200,
    });
    expectFacts(factsOf({ kind: 'numbers-only', pieces: ['ball'] }, kinds, PLAIN), { 'volume-per-paper': 17 / 3 });
  });

  it('show both numbers', () => {
    const { working, unit } = measuredFact(facts, 'height-to-width');
    expect(unit).toBe('ratio');
    expect(working).toMatchObject({ method: 'ratio', parts: [] });
    expect(working.steps[0]).toMatchObject({
      formula: { op: 'fraction', over: { op: 'symbol', name: 'h' }, under: { op: 'symbol', name: 'w' } },
      inputs: { h: { value: 100, unit: 'mm' }, w: { unit: 'mm' } },
      result: { unit: 'ratio' },
    });
  });

  it('have tolerances by the slopes of both', () => {
    // k = 2 h / w: slopes 2 / w and -2 h / w^2.
    const { errors } = measuredFact(facts, 'height-to-width');
    expect(Object.keys(errors).sort()).toEqual(['brick/height', 'brick/width']);
    expectNear(errors['brick/height']!, (2 * U * 2) / 30, SLOPES);
    expectNear(errors['brick/width']!, (-2 * U * 100) / 900, SLOPES);
    // k = l w / (2 (l + w)): slopes w^2 / (2 (l + w)^2) and l^2 / (2 (l + w)^2).
    expectNear(toleranceIn(facts, 'area-to-perimeter'), 2 * U * hypot(900 / 20_000, 4900 / 20_000), SLOPES);
  });

  it('are not measured where the divisor is 0', () => {
    const onBall = factsOf(laid(put('ball', 0, 0, 'round')), kinds, { ...PLAIN, base: 'contact-patches' });
    expect(onBall.get('height-to-width')).toEqual({
      status: 'not-measured',
      id: 'height-to-width',
      unit: 'ratio',
      reason: 'divisor-zero',
    });
    const point: Layout = {
      kind: 'traced',
      outlines: [{ outline: { kind: 'polygon', points: [[3, 5]] }, planeMm: 0, onTable: true }],
      pieces: [],
    };
    expect(factsOf(point, kinds, PLAIN).get('area-to-perimeter')).toMatchObject({ reason: 'divisor-zero' });
  });
});

describe('errors by reading', () => {
  it('are signed parts whose root sum square is the tolerance, for every measure; counts have none', () => {
    const kinds = kit({ brick: box(60, 40, 30), tip: { solid: 'cone', sizes: { diameter: 20, slant: 35 } } });
    const facts = factsOf(laid(put('brick', 0, 0), put('tip', 3, 5)), kinds, PLAIN);
    for (const fact of facts.values()) {
      if (fact.status !== 'measured') throw new Error(`${fact.id} is not measured`);
      expectNear(hypot(...Object.values(fact.errors)), fact.tolerance, { relative: 1e-15 }, fact.id);
      if (fact.unit === 'count') expect(fact.errors).toEqual({});
    }
    const { errors } = measuredFact(facts, 'volume');
    expect(Object.keys(errors)).toEqual(['brick/length', 'brick/width', 'brick/height', 'tip/diameter', 'tip/slant']);
    // V = l w h + ..: 40 x 30, 60 x 30, 60 x 40 for each mm.
    expectNear(errors['brick/length']!, 2 * U * 1200, SLOPES);
    expectNear(errors['brick/height']!, 2 * U * 2400, SLOPES);
    // The larger the diameter under the same slant, the lower: h = sqrt(s^2 - d^2 / 4), slope -d / (4 h).
    expectNear(measuredFact(facts, 'height').errors['tip/diameter']!, (-2 * U * 20) / (4 * sqrt(1125)), SLOPES);
  });

  it('of a traced build go by height and outline', () => {
    const disc = (x: number, radiusMm: number) =>
      ({ outline: { kind: 'disc', centre: [x, 0], radiusMm }, planeMm: 0, onTable: true }) as const;
    const facts = factsOf(
      { kind: 'traced', outlines: [disc(0, 30), disc(200, 50)], pieces: [], heightMm: 215 },
      kit({}),
      PLAIN,
    );
    expect(Object.keys(measuredFact(facts, 'height').errors)).toEqual(['traced:height']);
    const { errors } = measuredFact(facts, 'footprint-perimeter');
    expect(Object.keys(errors)).toEqual(['traced:0', 'traced:1']);
    expectNear(errors['traced:1']!, 2 * U * 2 * PI, SLOPES);
  });
});
