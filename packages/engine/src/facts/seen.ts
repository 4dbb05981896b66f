// What was seen or worked out of the standing of a build: for how many seconds it stood, and the tilt it stands to.

import type { Stability } from '@cairnmark/geometry';
import type { ReportedFact } from '../report-types.ts';
import type { Attempt } from '../types.ts';
import { reportedFact } from './fact.ts';
import { STOOD_ID, TILT_ID } from './ids.ts';

/** Seconds seen; of a build that fell, those until then. */
export function stoodFact(attempt: Attempt): ReportedFact {
  const { state, observed } = attempt;
  const value = state.kind === 'fell' ? state.afterSeconds : (observed.stoodSeconds ?? null);
  const seen = value === null ? null : { value, tolerance: 0, readings: [] };
  const counted = value === null ? null : { value, tolerance: 0, errors: {}, source: 'observed' as const };
  return reportedFact({ id: STOOD_ID, unit: 's', predicted: null, observed: seen, statedError: 0 }, counted, attempt);
}

/** rad; 0 for a build that falls by the equations; not measured where nothing is predicted or decided. */
export function tiltFact(stability: Stability | null, attempt: Attempt): ReportedFact {
  const value = stability === null ? null : tiltOf(stability);
  const counted = value === null ? null : { value, tolerance: 0, errors: {}, source: 'predicted' as const };
  const about = { id: TILT_ID, unit: 'rad' as const, predicted: null, observed: null, statedError: 0 };
  return reportedFact(about, counted, attempt);
}

function tiltOf({ verdict, stands, standsTo }: Stability): number | null {
  if (verdict === 'not-predicted') return null;
  return stands === false ? 0 : (standsTo?.tiltRad ?? null);
}
