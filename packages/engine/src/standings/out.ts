// Why a build takes no place: every reason there is, from the state of the attempt to the rules it breaks.

import type { OutReason } from '@cairnmark/scoring';
import { POINTS_ID } from '../facts/ids.ts';
import type { Report } from '../report-types.ts';
import type { Challenge } from '../types.ts';
import { unmeasuredLosses } from './losses.ts';

/** []: nothing keeps it out. Of a group that built nothing, and of a build that fell and is out, nothing more is told. */
export function outReasons(report: Report, challenge: Challenge): readonly OutReason[] {
  const { state, confirmedBy } = report;
  if (state.kind === 'absent' || state.kind === 'not-taking-part') return [{ code: state.kind }];
  const open: readonly OutReason[] = confirmedBy === null ? [{ code: 'not-confirmed' }] : [];
  if (state.kind !== 'stood' && !takesPlaceFallen(challenge)) return [...open, { code: 'fell' }];
  return [...open, ...outByStock(report), ...outByRules(report), ...outByMeasures(report, challenge)];
}

/** Stated points place a build that fell only where points decide first: what was measured of it does not count. */
const takesPlaceFallen = ({ fallen, ranking }: Challenge): boolean =>
  fallen.counts === 'as-measured' || (fallen.counts === 'points' && ranking.first.by === POINTS_ID);

function outByStock({ stockBreaches }: Report): readonly OutReason[] {
  const kinds = stockBreaches.map(({ kind }) => kind);
  return kinds.length > 0 ? [{ code: 'more-than-the-kit-has', kinds }] : [];
}

/** A yes/no rule that nobody has judged yet keeps nobody out. */
function outByRules({ requirements }: Report): readonly OutReason[] {
  const broken = requirements.filter(({ consequence, verdict }) => consequence.kind === 'must' && verdict === 'broken');
  return broken.length > 0 ? [{ code: 'rule-broken', requirements: broken.map(({ requirement }) => requirement) }] : [];
}

/** What decides first, and rules that must be kept: one that could not be looked at is not kept. */
function outByMeasures(report: Report, challenge: Challenge): readonly OutReason[] {
  const musts = report.requirements.filter(
    ({ consequence, verdict }) => consequence.kind === 'must' && verdict === 'not-measured',
  );
  const ofMusts = musts.flatMap(({ measure }) => measure ?? []);
  const measures = [...new Set([...missingForFirst(report, challenge), ...ofMusts])];
  return measures.length > 0 ? [{ code: 'not-measured', measures }] : [];
}

/** What the first measure of the ranking is missing: itself, or under points all by which some may have been lost. */
function missingForFirst(report: Report, challenge: Challenge): readonly string[] {
  const { by } = challenge.ranking.first;
  if (by === POINTS_ID) return unmeasuredLosses(report, challenge);
  return report.facts.some(({ id, value }) => id === by && value === null) ? [by] : [];
}
