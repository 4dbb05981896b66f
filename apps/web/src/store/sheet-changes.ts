// Changes from the record sheet: what was written down on paper, typed group by group. They go to the last try of the group,
// or begin one of which only numbers are known.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { piecesUsed } from '@cairnmark/engine';
import type { Change } from './class-changes.ts';
import { addAttempt, attemptsOf, changeAttempt, newAttempt } from './class-changes.ts';
import { isSettled } from './measured-in.ts';

export interface Cell {
  readonly group: string;
  readonly challenge: string;
  /** Now, ISO 8601 with zone. */
  readonly at: string;
}

/** null: the group has not begun. */
export const lastTry = (record: ClassRecord, group: string, challenge: string): Attempt | null =>
  attemptsOf(record, group, challenge).at(-1) ?? null;

export const onSheet =
  (cell: Cell, edit: (attempt: Attempt) => Attempt): Change =>
  (record) => {
    const last = lastTry(record, cell.group, cell.challenge);
    const begun = last === null ? beginTry(cell)(record) : record;
    const attempt = last ?? lastTry(begun, cell.group, cell.challenge);
    return attempt === null ? record : changeAttempt(attempt.id, edit)(begun);
  };

/** A further try, of which nothing is known yet. A group or challenge that is not there begins none. */
export const beginTry =
  ({ group, challenge, at }: Cell): Change =>
  (record) => {
    const [who, what] = [
      record.groups.find(({ id }) => id === group),
      record.challenges.find(({ id }) => id === challenge),
    ];
    if (who === undefined || what === undefined) return record;
    const attempt = newAttempt(record, who, what, afterAll(attemptsOf(record, group, challenge), at));
    return addAttempt({ ...attempt, layout: { kind: 'numbers-only', pieces: [] } })(record);
  };

/** `at`, or a second after the last try: one that came in from a device whose clock is fast would stay the last for ever. */
function afterAll(tries: readonly Attempt[], at: string): string {
  const lastMs = Math.max(...tries.map((one) => Date.parse(one.at)));
  return Date.parse(at) > lastMs ? at : new Date(lastMs + 1000).toISOString();
}

/** Reading `k` of the height, from 0; null: it is taken away. Readings beyond the last are added behind it. */
export const withReadingAt =
  (k: number, readingMm: number | null) =>
  (attempt: Attempt): Attempt => {
    const before = attempt.observed.heightReadingsMm;
    const others = before.filter((_, i) => i !== k);
    const after =
      readingMm === null
        ? others
        : k < before.length
          ? before.map((old, i) => (i === k ? readingMm : old))
          : [...before, readingMm];
    return { ...attempt, observed: { ...attempt.observed, heightReadingsMm: after } };
  };

/** Whether pieces can be counted for it: a drawn build has its own. */
export const isCounted = (attempt: Attempt | null): boolean =>
  attempt === null || attempt.layout.kind === 'numbers-only' || attempt.layout.pieces.length === 0;

/** So many pieces of a kind, of a build of which only numbers are known; a drawn one stays as it is. */
export const withPieces =
  (kind: string, count: number) =>
  (attempt: Attempt): Attempt => {
    if (!isCounted(attempt)) return attempt;
    const others = piecesUsed(attempt.layout).filter((one) => one !== kind);
    const pieces = [...others, ...Array.from({ length: count }, () => kind)];
    return { ...attempt, layout: { kind: 'numbers-only', pieces } };
  };

/** Something is known of it, and nobody has seen it yet. An empty table is nothing to see. */
export const waits = (attempt: Attempt): boolean =>
  !isSettled(attempt) &&
  (attempt.layout.pieces.length > 0 ||
    attempt.observed.heightReadingsMm.length > 0 ||
    attempt.observed.photoHeightMm !== undefined ||
    attempt.observed.stoodSeconds !== undefined ||
    attempt.state.kind !== 'stood');

/** Every last try of the challenge of which something is known was seen by one person. */
export const confirmAll =
  (challenge: string, by: string): Change =>
  (record) => {
    const last = new Set(record.groups.map(({ id }) => lastTry(record, id, challenge)?.id));
    return {
      ...record,
      attempts: record.attempts.map((attempt) =>
        waits(attempt) && last.has(attempt.id) ? { ...attempt, confirmedBy: by } : attempt,
      ),
    };
  };
