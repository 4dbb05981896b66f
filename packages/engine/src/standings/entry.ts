// A report as the ranking sees it: the facts, the points as one more value, and the reasons why it is out.

import type { Entry, PointsErrors } from '@cairnmark/scoring';
import { pointsErrors } from '@cairnmark/scoring';
import { POINTS_ID } from '../facts/ids.ts';
import { scoringFacts } from '../facts/scoring-facts.ts';
import type { Report } from '../report-types.ts';
import type { Challenge } from '../types.ts';
import { outReasons } from './out.ts';

const NO_ERRORS: PointsErrors = { tolerance: 0, errors: {}, steps: [] };

/** `name`: what the entry is called in the standings, a group or an attempt. */
export function entryOf(report: Report, challenge: Challenge, name: string): Entry {
  const facts = scoringFacts(report.facts);
  // Stated points of a build that fell are no measure of anything.
  const stated = report.state.kind !== 'stood' && challenge.fallen.counts === 'points';
  const errors = stated ? NO_ERRORS : pointsErrors(challenge.points, challenge.requirements, facts);
  const points = { id: POINTS_ID, value: report.total, unit: POINTS_ID, ...errors };
  return { group: name, values: new Map([...facts, [POINTS_ID, points]]), out: outReasons(report, challenge) };
}
