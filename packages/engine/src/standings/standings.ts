// The board of one challenge: for every group the attempt that counts, ranked.

import type { Entry, Standing } from '@cairnmark/scoring';
import { rank } from '@cairnmark/scoring';
import type { Report } from '../report-types.ts';
import type { Challenge, Group } from '../types.ts';
import type { CountingReports } from './counting.ts';
import { countingReports } from './counting.ts';
import { entryOf } from './entry.ts';

/** One standing a group. The reports are all of this challenge, in any order; a group may have several or none. */
export function standings(reports: readonly Report[], challenge: Challenge, groups: readonly Group[]): Standing[] {
  return standingsOf(countingReports(reports, challenge, groups), challenge);
}

/** The same, where it is known already which report of each group counts. */
export function standingsOf(counting: CountingReports, challenge: Challenge): Standing[] {
  const entries = [...counting].map(([group, report]) =>
    report === null ? noAttempt(group) : entryOf(report, challenge, group),
  );
  return rank(entries, challenge.ranking);
}

const noAttempt = (group: string): Entry => ({ group, values: new Map(), out: [{ code: 'no-attempt' }] });
