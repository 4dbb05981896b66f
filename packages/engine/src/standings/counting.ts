// Which attempt of a group counts: the best, the last or the chosen one, as the challenge says. Rules [A3], [A6] to [A8]
// of the rules of scoring. The order in which reports are handed in decides nothing.

import { leaders } from '@cairnmark/scoring';
import { momentOf } from '../instant.ts';
import type { Report } from '../report-types.ts';
import type { Challenge, Group } from '../types.ts';
import { entryOf } from './entry.ts';

/** By group id; null where no report of the group counts. */
export type CountingReports = ReadonlyMap<string, Report | null>;

/** The report that counts, for every group. The reports are all of this challenge. */
export function countingReports(
  reports: readonly Report[],
  challenge: Challenge,
  groups: readonly Group[],
): CountingReports {
  return new Map(
    groups.map(({ id }) => [
      id,
      countingReport(
        reports.filter(({ group }) => group === id),
        challenge,
      ),
    ]),
  );
}

function countingReport(reports: readonly Report[], challenge: Challenge): Report | null {
  const eligible = challenge.attemptCounts === 'chosen' ? reports.filter(({ chosen }) => chosen) : reports;
  const settled = eligible.filter(({ confirmedBy }) => confirmedBy !== null);
  const open = settled.length > 0 ? settled : eligible;
  const favoured =
    challenge.attemptCounts === 'best' ? latest(firstPlaced(open, challenge)) : firstPlaced(latest(open), challenge);
  return firstById(favoured);
}

/** Those that the ranking puts first; all of them when none takes a place. */
function firstPlaced(reports: readonly Report[], challenge: Challenge): readonly Report[] {
  const entries = reports.map((report) => entryOf(report, challenge, report.attempt));
  const first = new Set(leaders(entries, challenge.ranking).map(({ group }) => group));
  return first.size === 0 ? reports : reports.filter(({ attempt }) => first.has(attempt));
}

function latest(reports: readonly Report[]): readonly Report[] {
  const last = reports.reduce((most, { at }) => Math.max(most, momentOf(at)), Number.NEGATIVE_INFINITY);
  return reports.filter(({ at }) => momentOf(at) === last);
}

/** Left are attempts at the same moment that the ranking holds for equal; which of them is shown decides no place. */
function firstById(reports: readonly Report[]): Report | null {
  return reports.reduce<Report | null>(
    (first, one) => (first === null || one.attempt < first.attempt ? one : first),
    null,
  );
}
