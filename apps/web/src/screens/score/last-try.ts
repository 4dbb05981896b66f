// What changed since the try before this one.

import type { Attempt, Challenge, Change, Report } from '@cairnmark/engine';
import { changesSince } from '@cairnmark/engine';
import { exactSum } from '@cairnmark/scoring';

export interface SinceLastTry {
  /** Which try it is held against, counted from 1. */
  readonly number: number;
  /** Points more (or, negative, fewer); null: one of the two has no result. */
  readonly more: number | null;
  readonly changes: readonly Change[];
}

/** `tries`: of the group at the challenge, oldest first. null: this is the first of them, or nobody built at the one before. */
export function sinceLastTry(
  report: Report,
  reports: readonly Report[] | null,
  tries: readonly Attempt[],
  challenge: Challenge,
): SinceLastTry | null {
  const index = tries.findIndex(({ id }) => id === report.attempt) - 1;
  const before = reports?.find(({ attempt }) => attempt === tries[index]?.id);
  if (before === undefined || before.facts.length === 0) return null;
  return {
    number: index + 1,
    more: before.total === null || report.total === null ? null : exactSum([report.total, -before.total]),
    changes: changesSince(before, report).filter(({ fact }) => !challenge.hidden.includes(fact)),
  };
}
