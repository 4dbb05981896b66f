// The tries of a group at a challenge, and which of them counts.

import type { Attempt, Challenge, Group, Report } from '@cairnmark/engine';
import { countingReports } from '@cairnmark/engine';

export interface TryRow {
  readonly attempt: Attempt;
  /** Counted from 1, in the order they were begun. */
  readonly number: number;
  /** null: no result, which is not 0. */
  readonly total: number | null;
  readonly counts: boolean;
}

export function tryRows(
  tries: readonly Attempt[],
  reports: readonly Report[] | null,
  challenge: Challenge,
  group: Group,
): readonly TryRow[] {
  const counting = reports === null ? null : countingTry(reports, challenge, group);
  return tries.map((attempt, k) => ({
    attempt,
    number: k + 1,
    total: reports?.find((report) => report.attempt === attempt.id)?.total ?? null,
    counts: counting?.attempt === attempt.id,
  }));
}

/** The report that counts for the place of the group; null: none does. */
export const countingTry = (reports: readonly Report[], challenge: Challenge, group: Group): Report | null =>
  countingReports(reports, challenge, [group]).get(group.id) ?? null;
