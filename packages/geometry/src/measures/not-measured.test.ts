// Layouts that show less than all: a traced outline, just the numbers, nothing at all. What is not shown is never 0.

import { describe, expect, it } from 'vitest';
import { box, factsOf, kit, laid, PLAIN, valueIn } from '../../../../tests/reference/measured-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Layout } from '../stack/types.ts';
import type { Fact, MeasureId, NotMeasuredReason } from './types.ts';

/** Relative; outlines are walked on a grid of 1e-6 mm. */
const NEAR = { relative: 1e-7 };

const kinds = kit({ brick: box(60, 40, 30), drum: { solid: 'cylinder', sizes: { diameter: 50, height: 70 } } });
const PIECES = ['brick', 'drum', 'brick'];

const SUMS: readonly MeasureId[] = [
  'volume',
  'paper',
  'volume-per-paper',
  'pieces',
  'kinds',
  'flat-faces',
  'curved-surfaces',
  'straight-edges',
  'curved-edges',
  'vertices',
  'faces',
  'edges',
  'corners',
];
const BASES: readonly MeasureId[] = ['base-area', 'base-perimeter', 'base-width', 'height-to-width'];
const DRAWN: readonly MeasureId[] = [
  'footprint-area',
  'footprint-perimeter',
  'footprint-inner-perimeter',
  'footprint-parts',
  'courtyard-area',
  'hull-area',
  'area-to-perimeter',
  ...BASES,
];

/**
 * A pentagon of area 3000 and perimeter 260.900564326276 (REFERENCE table of polygons, ten times as large; the convex
 * hull there has the area 3500), and a disc of radius 15 apart from it.
 */
const pentagon = {
  kind: 'polygon',
  points: [
    [30, 40],
    [50, 60],
    [90, 50],
    [120, 80],
    [50, 110],
  ],
} as const;
const PENTAGON_PERIMETER = 260.900564326276;
const traced: Layout = {
  kind: 'traced',
  outlines: [
    { outline: pentagon, planeMm: 0, onTable: true },
    { outline: { kind: 'disc', centre: [200, 60], radiusMm: 15 }, planeMm: 40, onTable: false },
  ],
  pieces: PIECES,
  heightMm: 215,
};

function reasons(facts: ReadonlyMap<MeasureId, Fact>, ids: readonly MeasureId[]): (NotMeasuredReason | 'measured')[] {
  const found = ids
    .map((id) => facts.get(id))
    .map((fact) => (fact?.status === 'not-measured' ? fact.reason : 'measured'));
  return [...new Set(found)];
}

describe('a traced build', () => {
  const facts = factsOf(traced, kinds, PLAIN);

  it('has the height that was read', () => {
    expect(valueIn(facts, 'height')).toBe(215);
    expect(facts.get('height')).toMatchObject({ working: { method: 'highest-point' } });
  });

  it('has the footprint of its outlines, the base of those on the table', () => {
    expectNear(valueIn(facts, 'footprint-area'), 3000 + Math.PI * 225, NEAR);
    expectNear(valueIn(facts, 'footprint-perimeter'), PENTAGON_PERIMETER + 2 * Math.PI * 15, NEAR);
    expect(valueIn(facts, 'footprint-parts')).toBe(2);
    expectNear(valueIn(facts, 'base-area'), 3000, NEAR);
    expectNear(valueIn(facts, 'base-perimeter'), PENTAGON_PERIMETER, NEAR);
    const alone = factsOf({ ...traced, outlines: traced.outlines.slice(0, 1) }, kinds, PLAIN);
    expectNear(valueIn(alone, 'hull-area'), 3500, NEAR);
  });

  it('adds up the pieces listed', () => {
    expectNear(valueIn(facts, 'volume'), 2 * 60 * 40 * 30 + Math.PI * 25 ** 2 * 70, NEAR);
    expect(valueIn(facts, 'pieces')).toBe(3);
    expect(valueIn(facts, 'kinds')).toBe(2);
    expect(valueIn(facts, 'flat-faces')).toBe(6 + 2 + 6);
  });

  it('does not show which faces touch, nor where it touches the table', () => {
    expect(reasons(facts, ['touchable-surface'])).toEqual(['traced-outline-only']);
    for (const base of ['contact-patches', 'hull-of-contacts'] as const) {
      expect(reasons(factsOf(traced, kinds, { ...PLAIN, base }), BASES)).toEqual(['traced-outline-only']);
    }
    const hovering = traced.outlines.map((outline) => ({ ...outline, onTable: false }));
    expect(reasons(factsOf({ ...traced, outlines: hovering }, kinds, PLAIN), BASES)).toEqual(['traced-outline-only']);
  });

  it('has no height when none was read, no sums when no pieces are listed, no footprint without an outline', () => {
    const { heightMm: _, ...heightless } = traced;
    expect(reasons(factsOf(heightless, kinds, PLAIN), ['height'])).toEqual(['no-height-read']);
    expect(reasons(factsOf({ ...traced, pieces: [] }, kinds, PLAIN), SUMS)).toEqual(['no-pieces-listed']);
    expect(reasons(factsOf({ ...traced, outlines: [] }, kinds, PLAIN), [...DRAWN, 'touchable-surface'])).toEqual([
      'no-layout',
    ]);
  });
});

describe('just the numbers', () => {
  it('gives sums and counts; all else is not measured, for want of a layout', () => {
    const facts = factsOf({ kind: 'numbers-only', pieces: PIECES }, kinds, PLAIN);
    expectNear(valueIn(facts, 'volume'), 2 * 60 * 40 * 30 + Math.PI * 25 ** 2 * 70, NEAR);
    expect(reasons(facts, SUMS)).toEqual(['measured']);
    expect(reasons(facts, ['height', ...DRAWN, 'touchable-surface'])).toEqual(['no-layout']);
  });

  it('gives no sums of no pieces', () => {
    const facts = factsOf({ kind: 'numbers-only', pieces: [] }, kinds, PLAIN);
    expect(reasons(facts, SUMS)).toEqual(['no-pieces-listed']);
  });
});

describe('an empty table', () => {
  it('measures nothing', () => {
    const facts = factsOf(laid(), kinds, PLAIN);
    expect(reasons(facts, [...facts.keys()])).toEqual(['no-pieces-listed']);
  });
});
