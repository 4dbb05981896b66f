// Challenges as a class could hold them: every name points somewhere, every number is within its limits.

import type { Challenge, Kit } from '@cairnmark/engine';
import type { MeasureId, SolidSpec } from '@cairnmark/geometry';
import fc from 'fast-check';
import { id, listOf, named, number, optional, points, sizeMm, text } from './parts.ts';

const MEASURES = ['height', 'base-area', 'courtyard-area', 'volume', 'pieces'] as const satisfies readonly MeasureId[];

const solid: fc.Arbitrary<SolidSpec> = fc.oneof(
  fc.record({ solid: fc.constant('cube' as const), sizes: fc.record({ edge: sizeMm }) }),
  fc.record({ solid: fc.constant('cylinder' as const), sizes: fc.record({ diameter: sizeMm, height: sizeMm }) }),
  fc.record({
    solid: fc.constant('regular-prism' as const),
    sizes: fc.record({ sides: fc.integer({ min: 3, max: 8 }), edge: sizeMm, height: sizeMm }),
  }),
);

/** Pieces made, and how many of them are crushed, where it is said. */
const counts = fc.nat(50).chain((stock) => optional({ crushed: fc.nat(stock) }).map((some) => ({ stock, ...some })));

const bareKit: fc.Arbitrary<Kit> = fc.record({
  id,
  name: text,
  kinds: named(
    fc
      .record({
        id,
        name: text,
        solid,
        counts,
        material: fc.oneof(
          fc.record({
            kind: fc.constant('folded-paper' as const),
            gramsPerM2: number(60, 300),
            base: fc.constantFrom('closed' as const, 'open' as const),
            printedNet: fc.boolean(),
          }),
          fc.record({ kind: fc.constant('full' as const), densityGPerCm3: number(0.01, 9) }),
        ),
        surface: fc.constantFrom('paper', 'wood'),
        friction: number(0, 1),
      })
      .map(({ counts: both, ...kind }) => ({ ...kind, ...both })),
    1,
  ),
  frictions: fc.constant([]),
});

/** Surfaces that the kinds have, or the table; each pair once. */
export const kit: fc.Arbitrary<Kit> = bareKit.chain((bare) => {
  const [first] = bare.kinds;
  const pair = fc.record({ between: fc.constantFrom([first!.surface, 'table'] as const), friction: number(0, 1) });
  return optional({ frictions: fc.tuple(pair) }).map(({ frictions = [] }) => ({ ...bare, frictions }));
});

const consequence = fc.oneof(
  fc.record({ kind: fc.constant('must' as const) }),
  fc.record({ kind: fc.constant('costs' as const), points: number(0, 20) }),
  fc.record({ kind: fc.constant('earns' as const), points: number(0, 20) }),
);

/** `kinds`: ids that the kit has. */
const requirementOf = (kinds: readonly string[]) =>
  fc.oneof(
    fc.record({
      id,
      kind: fc.constant('measured' as const),
      measure: fc.constantFrom(...MEASURES),
      comparison: fc.constantFrom('exactly' as const, 'at-least' as const, 'at-most' as const),
      limit: number(0, 1e6),
      consequence,
    }),
    fc.record({ id, kind: fc.constant('judged' as const), text, consequence }),
    fc.record({
      id,
      kind: fc.constant('only-kinds' as const),
      kinds: fc.subarray([...kinds], { minLength: 1 }),
      consequence,
    }),
  );

const rankingKey = fc.record({
  by: fc.constantFrom('points', ...MEASURES),
  better: fc.constantFrom('more' as const, 'less' as const),
  roundTo: number(0, 100),
});

const supply: fc.Arbitrary<NonNullable<Challenge['supply']>> = fc.record({
  ends: fc.oneof(
    fc.record({ kind: fc.constant('time' as const), seconds: number(1, 900) }),
    fc.record({ kind: fc.constant('turns' as const), turns: fc.integer({ min: 1, max: 40 }) }),
    fc.record({ kind: fc.constant('stock-empty' as const) }),
  ),
  handOver: fc.constantFrom('at-a-touch' as const, 'once-it-lies' as const, 'as-the-group-likes' as const),
  dropped: fc.constantFrom('lost-this-turn' as const, 'must-be-fetched' as const, 'carrier-chooses' as const),
});

export const challenge: fc.Arbitrary<Challenge> = fc
  .tuple(named(fc.record({ id, name: text })), kit)
  .chain(([criteria, ofKit]) =>
    fc.record({
      id,
      name: text,
      kit: fc.constant(ofKit),
      gradePreset: fc.constantFrom('grades-2-3' as const, 'grades-4-5' as const, 'grades-6-8' as const),
      ruler: fc.constantFrom('mm' as const, 'cm' as const, 'quarter-inch' as const),
      counting: fc.constantFrom('flat-only' as const, 'flat-and-curved-apart' as const, 'all-surfaces' as const),
      base: fc.constantFrom(
        'outline-of-pieces-on-table' as const,
        'contact-patches' as const,
        'hull-of-contacts' as const,
      ),
      gapAllowanceMm: number(0.05, 5),
      slackMm: number(0, 5),
      heightCounts: fc.shuffledSubarray(['ruler' as const, 'photo' as const, 'model' as const], { minLength: 1 }),
      measuringErrorMm: number(0, 10),
      criteria: fc.constant(criteria),
      points: named(
        fc
          .tuple(
            fc.record({
              id,
              measure: fc.constantFrom(...MEASURES, ...criteria.map((one) => `judged:${one.id}`)),
              points,
              per: number(0.1, 1e5),
              rounding: fc.constantFrom('none' as const, 'down' as const, 'nearest' as const, 'up' as const),
            }),
            optional({ capPoints: number(0, 50), floorPoints: number(-50, 0) }),
          )
          .map(([row, limits]) => ({ ...row, ...limits })),
      ),
      requirements: named(requirementOf(ofKit.kinds.map((kind) => kind.id))),
      ranking: fc.record({
        first: rankingKey,
        tieBreaks: fc.uniqueArray(rankingKey, { selector: (key) => key.by, maxLength: 2 }),
      }),
      attemptCounts: fc.constantFrom('best' as const, 'last' as const, 'chosen' as const),
      fallen: fc.oneof(
        fc.record({ counts: fc.constant('out' as const) }),
        fc.record({ counts: fc.constant('points' as const), points }),
        fc.record({ counts: fc.constant('as-measured' as const) }),
      ),
      own: fc.record({
        pi: fc.constantFrom('3' as const, '3.14' as const, '22/7' as const, 'key' as const),
        closeShare: number(0, 1),
        rewards: listOf(fc.record({ measure: fc.constantFrom(...MEASURES), points })),
      }),
      supply: fc.option(supply),
      hidden: fc.subarray([...MEASURES]),
      labels: listOf(text),
    }),
  )
  .chain((bare) => optional({ bestShown: fc.boolean() }).map((some) => ({ ...bare, ...some })));
