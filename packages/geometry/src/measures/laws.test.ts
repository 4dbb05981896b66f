// Laws that the measures of any build keep, on builds drawn by lot from a kit of lopsided pieces. Lengths mm.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf, kit, laid, PLAIN, put, valueIn } from '../../../../tests/reference/measured-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { Solid, SolidSpec } from '../solids/types.ts';
import { buildStack } from '../stack/build-stack.ts';
import type { LaidPiece, Layout } from '../stack/types.ts';
import type { PieceKinds } from './build.ts';
import type { Fact, MeasureId } from './types.ts';

const SEED = 20_261_125;
const RUNS = share(400, 40);

/**
 * Relative to the size of the figure (some 300 mm): the walking grid is 1e-6 mm, and a build of a dozen pieces has a
 * hundred corners on it.
 */
const RELATIVE = 1e-6;

/** Sizes are multiples of 10, so that on a grid of 10 mm pieces touch or are clear of each other by 5. */
const SPECS: Readonly<Record<string, SolidSpec>> = {
  slab: { solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 20 } },
  bar: { solid: 'rectangular-prism', sizes: { length: 90, width: 20, height: 30 } },
  cube: { solid: 'cube', sizes: { edge: 40 } },
  stump: { solid: 'rectangular-frustum', sizes: { length: 60, width: 40, topLength: 30, height: 30 } },
  tent: { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } },
  drum: { solid: 'cylinder', sizes: { radius: 20, height: 50 } },
  tip: { solid: 'cone', sizes: { radius: 15, height: 40 } },
  ball: { solid: 'sphere', sizes: { radius: 25 } },
};
const KINDS = kit(SPECS);
const RESTINGS: Readonly<Record<string, readonly string[]>> = {
  slab: ['base', 'long-side', 'short-side'],
  bar: ['base', 'long-side', 'short-side'],
  cube: ['base'],
  stump: ['base', 'top'],
  tent: ['base'],
  drum: ['base', 'side'],
  tip: ['base'],
  ball: ['round'],
};

const pieceOf = (kind: string): fc.Arbitrary<LaidPiece> =>
  fc
    .record({
      resting: fc.constantFrom(...RESTINGS[kind]!),
      x: fc.integer({ min: -8, max: 8 }),
      y: fc.integer({ min: -8, max: 8 }),
      quarter: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ resting, x, y, quarter }) => put(kind, 10 * x, 10 * y, resting, (quarter * Math.PI) / 2));

const piece = fc.constantFrom(...Object.keys(SPECS)).chain(pieceOf);
const build = fc.array(piece, { minLength: 1, maxLength: 9 });

const shifted = (pieces: readonly LaidPiece[], turn: number, dx: number, dy: number): Layout => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return laid(
    ...pieces.map((one) => ({
      ...one,
      xMm: c * one.xMm - s * one.yMm + dx,
      yMm: s * one.xMm + c * one.yMm + dy,
      turnRad: one.turnRad + turn,
    })),
  );
};

type Facts = ReadonlyMap<MeasureId, Fact>;

/** `facts` are those of `others`, lengths times k, areas times k^2, volumes times k^3, counts alike. */
function expectScaled(facts: Facts, others: Facts, k: number): void {
  const power = { mm: 1, mm2: 2, mm3: 3, count: 0, rad: 0 };
  for (const [id, fact] of others) {
    if (fact.status !== 'measured') throw new Error(`${id} is not measured`);
    const size = Math.max(fact.value, 300 ** power[fact.unit]);
    const expected = fact.value * k ** power[fact.unit];
    const slack = RELATIVE * size * k ** power[fact.unit];
    const value = valueIn(facts, id);
    expect(Math.abs(value - expected), `${id}: ${value}, expected ${expected}`).toBeLessThanOrEqual(slack);
  }
}

const scaledKinds = (k: number): PieceKinds =>
  kit(
    Object.fromEntries(
      Object.entries(SPECS).map(([kind, { solid, sizes }]) => [
        kind,
        { solid, sizes: Object.fromEntries(Object.entries(sizes).map(([name, value]) => [name, value * k])) },
      ]),
    ),
  );

const solids = new Map<string, Solid>(
  Object.entries(SPECS).map(([kind, spec]) => {
    const made = makeSolid(spec);
    if (!made.ok) throw new Error(`${kind} cannot be made`);
    return [kind, made.value];
  }),
);

function holds<T>(name: string, property: fc.IRawProperty<T>): void {
  it(`${name} [seed ${SEED}]`, () => {
    fc.assert(property, { seed: SEED, numRuns: RUNS });
  });
}

describe('any build', () => {
  holds(
    'turned and shifted as a whole, keeps all its facts',
    fc.property(
      build,
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.integer({ min: -700, max: 700 }),
      fc.integer({ min: -700, max: 700 }),
      (pieces, turn, dx, dy) => {
        expectScaled(factsOf(shifted(pieces, turn, dx, dy), KINDS, PLAIN), factsOf(laid(...pieces), KINDS, PLAIN), 1);
      },
    ),
  );

  holds(
    'k times as large, has lengths k, areas k^2, volumes k^3 times as large, and the same counts',
    fc.property(build, fc.double({ min: 1, max: 3, noNaN: true }), (pieces, k) => {
      const larger = pieces.map((one) => ({ ...one, xMm: one.xMm * k, yMm: one.yMm * k }));
      expectScaled(factsOf(laid(...larger), scaledKinds(k), PLAIN), factsOf(laid(...pieces), KINDS, PLAIN), k);
    }),
  );

  holds(
    'covers no more than its pieces do, and no less than the largest; lies within its hull; stands within its footprint',
    fc.property(build, (pieces) => {
      const facts = factsOf(laid(...pieces), KINDS, PLAIN);
      const each = pieces.map((one) => valueIn(factsOf(laid(one), KINDS, PLAIN), 'footprint-area'));
      const area = valueIn(facts, 'footprint-area');
      const slack = RELATIVE * 300 ** 2;
      expect(area).toBeLessThanOrEqual(each.reduce((total, one) => total + one, 0) + slack);
      expect(area).toBeGreaterThanOrEqual(Math.max(...each) - slack);
      expect(area + valueIn(facts, 'courtyard-area')).toBeLessThanOrEqual(valueIn(facts, 'hull-area') + slack);
      expect(valueIn(facts, 'base-area')).toBeLessThanOrEqual(area + slack);
    }),
  );

  holds(
    'is no lower with one more piece',
    fc.property(build, piece, (pieces, more) => {
      const height = (all: readonly LaidPiece[]) => valueIn(factsOf(laid(...all), KINDS, PLAIN), 'height');
      expect(height([...pieces, more])).toBeGreaterThanOrEqual(height(pieces) - 1e-9);
    }),
  );

  holds(
    'has the surface of its pieces, shared out between what can be touched, contacts (twice) and the table',
    fc.property(build, (pieces) => {
      const facts = factsOf(laid(...pieces), KINDS, PLAIN);
      const stack = buildStack(pieces, solids);
      if (!stack.ok) throw new Error('refused');
      const lost = stack.value.faceContacts.reduce(
        (total, { second, areaMm2 }) => total + (second === 'table' ? areaMm2 : 2 * areaMm2),
        0,
      );
      const surface = pieces.reduce((total, { kind }) => total + solids.get(kind)!.surfaceMm2, 0);
      expect(Math.abs(valueIn(facts, 'touchable-surface') + lost - surface)).toBeLessThanOrEqual(1e-9 * surface);
      expect(Math.abs(valueIn(facts, 'paper') - surface)).toBeLessThanOrEqual(1e-9 * surface);
    }),
  );

  holds(
    'has contact patches no larger than the outlines of the pieces on the table, within the hull of its contacts',
    fc.property(build, (pieces) => {
      const base = (definition: 'outline-of-pieces-on-table' | 'contact-patches' | 'hull-of-contacts') =>
        valueIn(factsOf(laid(...pieces), KINDS, { ...PLAIN, base: definition }), 'base-area');
      const slack = RELATIVE * 300 ** 2;
      expect(base('contact-patches')).toBeLessThanOrEqual(base('outline-of-pieces-on-table') + slack);
      expect(base('contact-patches')).toBeLessThanOrEqual(base('hull-of-contacts') + slack);
    }),
  );
});

describe('pieces on spots of their own', () => {
  it(`have the same facts and tolerances in any order [seed ${SEED}]`, () => {
    const apart = fc
      .array(piece, { minLength: 2, maxLength: 7 })
      .map((pieces) => pieces.map((one, spot) => ({ ...one, xMm: one.xMm + 300 * spot })))
      .chain((pieces) => fc.tuple(fc.constant(pieces), fc.shuffledSubarray(pieces, { minLength: pieces.length })));
    fc.assert(
      fc.property(apart, ([pieces, shuffled]) => {
        const [facts, others] = [pieces, shuffled].map((all) => factsOf(laid(...all), KINDS, PLAIN)) as [Facts, Facts];
        expectScaled(others, facts, 1);
        for (const [id, fact] of facts) {
          const other = others.get(id);
          if (fact.status !== 'measured' || other?.status !== 'measured') throw new Error(`${id} is not measured`);
          const slack = 1e-3 * Math.max(fact.tolerance, 0.1);
          expect(Math.abs(other.tolerance - fact.tolerance), id).toBeLessThanOrEqual(slack);
        }
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });
});
