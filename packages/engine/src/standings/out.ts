// Why a build takes no place: the first reason that holds, from the state of the attempt to the rules it breaks.

import type { OutReason } from '@cairnmark/scoring';
import { POINTS_ID } from '../facts/ids.ts';
import type { Report } from '../report-types.ts';
import type { Challenge } from '../types.ts';

/** null: nothing keeps it out, as far as the report alone can tell (the ranking may still miss a measure). */
export function outReason(report: Report, challenge: Challenge): OutReason | null {
  return outByState(report, challenge) ?? outByStock(report) ?? outByRule(report);
}

function outByState({ state, confirmedBy }: Report, challenge: Challenge): OutReason | null {
  if (state.kind === 'absent' || state.kind === 'not-taking-part') return { code: state.kind };
  if (confirmedBy === null) return { code: 'not-confirmed' };
  return state.kind === 'stood' || takesPlaceFallen(challenge) ? null : { code: 'fell' };
}

/** Stated points place a build that fell only where points decide first: what was measured of it does not count. */
const takesPlaceFallen = ({ fallen, ranking }: Challenge): boolean =>
  fallen.counts === 'as-measured' || (fallen.counts === 'points' && ranking.first.by === POINTS_ID);

function outByStock({ stockBreaches }: Report): OutReason | null {
  const kinds = stockBreaches.map(({ kind }) => kind);
  return kinds.length > 0 ? { code: 'more-than-the-kit-has', kinds } : null;
}

/** A rule that could not be looked at is not kept. A yes/no rule that nobody has judged yet keeps nobody out. */
function outByRule({ requirements }: Report): OutReason | null {
  const musts = requirements.filter(({ consequence }) => consequence.kind === 'must');
  const broken = musts.filter(({ verdict }) => verdict === 'broken').map(({ requirement }) => requirement);
  if (broken.length > 0) return { code: 'rule-broken', requirements: broken };
  const [unmeasured] = musts.filter(({ verdict }) => verdict === 'not-measured');
  return unmeasured === undefined ? null : { code: 'not-measured', measure: unmeasured.measure ?? 'pieces' };
}
