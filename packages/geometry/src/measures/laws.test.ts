// Laws that the measures of any build keep, on builds drawn by lot from a kit of lopsided pieces. Lengths mm.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DRAWN_KINDS, DRAWN_SPECS, drawnBuild, drawnPiece, shifted } from '../../../../tests/reference/drawn-builds.ts';
import { factsOf, kit, laid, measuredFact, PLAIN } from '../../../../tests/reference/measured-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { CONTACT_MM, SAME_LENGTH_MM } from '../kernel/tolerance.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { Solid } from '../solids/types.ts';
import { buildStack } from '../stack/build-stack.ts';
import { planOverlapDepth } from '../stack/plan-overlap.ts';
import type { LaidPiece } from '../stack/types.ts';
import type { PieceKinds } from './build.ts';
import { buildOf } from './build.ts';
import { MEASURES } from './catalogue.ts';
import { contextOf } from './context.ts';
import type { BaseDefinition, Fact, MeasureId } from './types.ts';

const SEED = 20_261_125;
const RUNS = share(1000, 100);
/** With tolerances a build is measured some thirty times. */
const SLOW_RUNS = share(300, 20);
const TIMEOUT_MS = share(600_000, 60_000);

/**
 * Relative to the size of the figure (some 300 mm): the walking grid is 1e-6 mm, and a build of a dozen pieces has a
 * hundred corners on it.
 */
const RELATIVE = 1e-6;
const SIZE_MM = 300;
const SLACK_MM2 = RELATIVE * SIZE_MM ** 2;
const OUTLINES = 'outline-of-pieces-on-table';

/** Values alone, without the tolerances, whose slopes would take many times as long. */
function valuesOf(
  pieces: readonly LaidPiece[],
  kinds: PieceKinds,
  base: BaseDefinition,
): ReadonlyMap<MeasureId, number> {
  const build = buildOf(laid(...pieces), kinds);
  const context = build.ok ? contextOf(build.value, { ...PLAIN, base }) : build;
  if (!context.ok) throw new Error(`refused: ${JSON.stringify(context.issues)}`);
  return new Map(
    MEASURES.flatMap(({ id, measure }) => {
      const finding = measure(context.value);
      // On a point or a line there is no width to divide by.
      if (!finding.found && finding.reason === 'divisor-zero') return [];
      if (!finding.found) throw new Error(`${id} is not measured`);
      return [[id, finding.value]];
    }),
  );
}

const plain = (pieces: readonly LaidPiece[]): ReadonlyMap<MeasureId, number> => valuesOf(pieces, DRAWN_KINDS, OUTLINES);

const valueFor = (pieces: readonly LaidPiece[], measure: MeasureId, base: BaseDefinition = OUTLINES): number =>
  valuesOf(pieces, DRAWN_KINDS, base).get(measure)!;

/** `values` are those of `others`, lengths times k, areas times k^2, volumes times k^3, counts alike. */
function expectScaled(values: ReadonlyMap<MeasureId, number>, others: ReadonlyMap<MeasureId, number>, k: number): void {
  const power = { mm: 1, mm2: 2, mm3: 3, count: 0, rad: 0, ratio: 0, s: 0 };
  for (const { id, unit } of MEASURES) {
    const [value, other] = [values.get(id)!, others.get(id)!];
    const times = k ** power[unit];
    const slack = RELATIVE * times * Math.max(other, SIZE_MM ** power[unit]);
    expectNear(value, times * other, { absolute: slack }, id);
  }
}

const scaledKinds = (k: number): PieceKinds =>
  kit(
    Object.fromEntries(
      Object.entries(DRAWN_SPECS).map(([kind, { solid, sizes }]) => [
        kind,
        { solid, sizes: Object.fromEntries(Object.entries(sizes).map(([name, value]) => [name, value * k])) },
      ]),
    ),
  );

/** No two outlines overlap by less than a contact, which does not grow with the build; to touch exactly is clear. */
function isClear(pieces: readonly LaidPiece[]): boolean {
  const stack = buildStack(pieces, solids, 0);
  if (!stack.ok) throw new Error('refused');
  const outlines = stack.value.pieces.map(({ outline }) => outline);
  return outlines.every((one, index) =>
    outlines.slice(0, index).every((other) => {
      const depthMm = Math.abs(planOverlapDepth(one, other));
      return depthMm < SAME_LENGTH_MM || depthMm > CONTACT_MM;
    }),
  );
}

const solids = new Map<string, Solid>(
  Object.entries(DRAWN_SPECS).map(([kind, spec]) => {
    const made = makeSolid(spec);
    if (!made.ok) throw new Error(`${kind} cannot be made`);
    return [kind, made.value];
  }),
);

function holds<T>(name: string, property: fc.IRawProperty<T>, numRuns = RUNS): void {
  it(
    `${name} [seed ${SEED}]`,
    () => {
      fc.assert(property, { seed: SEED, numRuns });
    },
    TIMEOUT_MS,
  );
}

describe('any build', () => {
  holds(
    'turned and shifted as a whole, keeps all its facts',
    fc.property(
      drawnBuild,
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.integer({ min: -700, max: 700 }),
      fc.integer({ min: -700, max: 700 }),
      (pieces, turn, dx, dy) => {
        expectScaled(plain(shifted(pieces, turn, dx, dy)), plain(pieces), 1);
      },
    ),
  );

  holds(
    'k times as large, has lengths k, areas k^2, volumes k^3 times as large, and the same counts',
    fc.property(drawnBuild, fc.double({ min: 1, max: 3, noNaN: true }), (pieces, k) => {
      fc.pre(isClear(pieces));
      const larger = pieces.map((one) => ({ ...one, xMm: one.xMm * k, yMm: one.yMm * k }));
      expectScaled(valuesOf(larger, scaledKinds(k), OUTLINES), plain(pieces), k);
    }),
  );

  holds(
    'covers no more than its pieces do, and no less than the largest; lies in its hull; stands in its footprint',
    fc.property(drawnBuild, (pieces) => {
      const values = plain(pieces);
      const each = pieces.map((one) => valueFor([one], 'footprint-area'));
      const area = values.get('footprint-area')!;
      expect(area).toBeLessThanOrEqual(each.reduce((total, one) => total + one, 0) + SLACK_MM2);
      expect(area).toBeGreaterThanOrEqual(Math.max(...each) - SLACK_MM2);
      expect(area + values.get('courtyard-area')!).toBeLessThanOrEqual(values.get('hull-area')! + SLACK_MM2);
      expect(values.get('base-area')!).toBeLessThanOrEqual(area + SLACK_MM2);
    }),
  );

  holds(
    'is no lower with one more piece',
    fc.property(drawnBuild, drawnPiece, (pieces, more) => {
      expect(valueFor([...pieces, more], 'height')).toBeGreaterThanOrEqual(valueFor(pieces, 'height') - 1e-9);
    }),
  );

  holds(
    'has the surface of its pieces, shared out between what can be touched, contacts (twice) and the table',
    fc.property(drawnBuild, (pieces) => {
      const values = plain(pieces);
      const stack = buildStack(pieces, solids, 0);
      if (!stack.ok) throw new Error('refused');
      const lost = stack.value.faceContacts.reduce(
        (total, { second, areaMm2 }) => total + (second === 'table' ? areaMm2 : 2 * areaMm2),
        0,
      );
      const surface = pieces.reduce((total, { kind }) => total + solids.get(kind)!.surfaceMm2, 0);
      expect(Math.abs(values.get('touchable-surface')! + lost - surface)).toBeLessThanOrEqual(1e-9 * surface);
      expect(Math.abs(values.get('paper')! - surface)).toBeLessThanOrEqual(1e-9 * surface);
    }),
  );

  holds(
    'has contact patches no larger than the outlines of the pieces on the table, within the hull of its contacts',
    fc.property(drawnBuild, (pieces) => {
      const base = (definition: BaseDefinition) => valueFor(pieces, 'base-area', definition);
      expect(base('contact-patches')).toBeLessThanOrEqual(base(OUTLINES) + SLACK_MM2);
      expect(base('contact-patches')).toBeLessThanOrEqual(base('hull-of-contacts') + SLACK_MM2);
    }),
  );
});

type Facts = ReadonlyMap<MeasureId, Fact>;

/** Tolerances are alike: slopes are differences over the walking grid, see NUDGE_MM. */
function expectTolerances(facts: Facts, others: Facts): void {
  for (const { id, unit } of MEASURES) {
    const [here, there] = [measuredFact(facts, id).tolerance, measuredFact(others, id).tolerance];
    const slack = 1e-3 * Math.max(here, unit === 'mm2' ? 10 : 0.1);
    expectNear(there, here, { absolute: slack }, `tolerance of ${id}`);
  }
}

const withTolerances = (pieces: readonly LaidPiece[]): Facts => factsOf(laid(...pieces), DRAWN_KINDS, PLAIN);

describe('tolerances', () => {
  holds(
    'stay when the build is turned and shifted as a whole',
    fc.property(drawnBuild, fc.double({ min: -3, max: 3, noNaN: true }), (pieces, turn) => {
      expectTolerances(withTolerances(shifted(pieces, turn, 70, -30)), withTolerances(pieces));
    }),
    SLOW_RUNS,
  );
});

describe('pieces on spots of their own', () => {
  const apart = fc
    .array(drawnPiece, { minLength: 2, maxLength: 7 })
    .map((pieces) => pieces.map((one, spot) => ({ ...one, xMm: one.xMm + SIZE_MM * spot })))
    .chain((pieces) => fc.tuple(fc.constant(pieces), fc.shuffledSubarray(pieces, { minLength: pieces.length })));

  holds(
    'have the same facts and tolerances in any order',
    fc.property(apart, ([pieces, shuffled]) => {
      expectScaled(plain(shuffled), plain(pieces), 1);
      expectTolerances(withTolerances(shuffled), withTolerances(pieces));
    }),
    SLOW_RUNS,
  );
});
