// Attempts and whole classes: every group, challenge, kind, criterion and rule that is named is there.

import type { Attempt, Challenge, ClassRecord } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import fc from 'fast-check';
import { challenge } from './challenge.ts';
import { layoutOf } from './layout.ts';
import { id, instant, listOf, named, number, optional, points, seconds, sizeMm, text } from './parts.ts';

export const classRecord: fc.Arbitrary<ClassRecord> = fc
  .tuple(named(fc.record({ id, name: text, measured: fc.constant({}) }), 1), named(challenge, 1))
  .chain(([groups, challenges]) =>
    fc.record({
      name: text,
      invented: fc.boolean(),
      groups: fc.constant(groups),
      challenges: fc.constant(challenges),
      attempts: named(
        fc.constantFrom(...challenges).chain((one) =>
          attemptAt(
            one,
            groups.map((group) => group.id),
          ),
        ),
      ),
      supplies: fc.constant(suppliesOf(challenges, groups[0]?.id ?? '')),
      day: fc.record({
        kind: fc.constantFrom('sum-of-points' as const, 'sum-of-place-points' as const, 'mean-place' as const),
        placePoints: listOf(points),
        weights: fc.dictionary(fc.constantFrom(...challenges.map((one) => one.id)), number(0, 3)),
        meanOfThosePresent: fc.boolean(),
      }),
    }),
  );

/** One stroke a challenge that is played for pieces, of which there is at least one. */
function suppliesOf(challenges: readonly Challenge[], group: string): ClassRecord['supplies'] {
  const played = challenges.flatMap((one): readonly (readonly [string, readonly SupplyEvent[]])[] => {
    const [kind] = one.kit.kinds.filter(({ stock }) => stock > 0);
    if (one.supply === null || kind === undefined) return [];
    const what = { kind: 'earned' as const, piece: kind.id, count: 1 };
    return [[one.id, [{ id: 'stroke', group, what, round: 1, carrier: 'Ada' }]]];
  });
  return Object.fromEntries([...played].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** An attempt by one of `groups` at `at`. */
export function attemptAt(at: Challenge, groups: readonly string[]): fc.Arbitrary<Attempt> {
  const judgedRules = at.requirements.filter((one) => one.kind === 'judged').map((one) => one.id);
  return fc.record({
    id,
    group: fc.constantFrom(...groups),
    challenge: fc.constant(at.id),
    at: instant,
    state: fc.oneof(
      fc.record({ kind: fc.constantFrom('stood' as const, 'fell-before-measuring' as const, 'absent' as const) }),
      fc.record({ kind: fc.constant('fell' as const), afterSeconds: seconds }),
    ),
    layout: layoutOf(at.kit.kinds.map((kind) => kind.id)),
    observed: fc
      .tuple(
        fc.record({ heightReadingsMm: listOf(sizeMm) }),
        optional({ photoHeightMm: sizeMm, stoodSeconds: seconds }),
      )
      .map(([readings, more]) => ({ ...readings, ...more })),
    judged: marksOn(at.criteria.map((criterion) => criterion.id)),
    answers: judgedRules.length > 0 ? fc.dictionary(fc.constantFrom(...judgedRules), answer) : fc.constant({}),
    own: fc.uniqueArray(fc.record({ measure: fc.constantFrom('volume' as const, 'height' as const), value: sizeMm }), {
      selector: ({ measure }) => measure,
      maxLength: 2,
    }),
    decisions: listOf(decision),
    adjustments: listOf(fc.record({ points, by: text, reason: text, at: instant })),
    confirmedBy: fc.option(text),
    chosen: fc.boolean(),
  });
}

const answer = fc
  .tuple(fc.record({ kept: fc.boolean() }), optional({ note: text }))
  .map(([said, more]) => ({ ...said, ...more }));

const decision = fc
  .tuple(
    fc.record({
      measure: fc.constantFrom('height' as const, 'base-area' as const),
      value: sizeMm,
      by: text,
      reason: text,
      at: instant,
    }),
    optional({ takenBack: fc.record({ at: instant, reason: text }) }),
  )
  .map(([taken, back]) => ({ ...taken, ...back }));

/** No judge marks a criterion twice. */
function marksOn(criteria: readonly string[]): fc.Arbitrary<Attempt['judged']> {
  if (criteria.length === 0) return fc.constant([]);
  const mark = fc.record({
    judge: fc.constantFrom('harbour master', 'librarian'),
    criterion: fc.constantFrom(...criteria),
    mark: number(0, 4),
  });
  return fc.uniqueArray(mark, { selector: ({ judge, criterion }) => `${judge} ${criterion}`, maxLength: 4 });
}
