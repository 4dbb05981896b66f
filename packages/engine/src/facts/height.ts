// The height of a build: read with a ruler, read off a photo, or worked out from the layout. The challenge says which of
// them counts. mm.

import { rulerOf } from '@cairnmark/geometry';
import type { ReportedFact } from '../report-types.ts';
import type { Challenge, HeightSource, Observed } from '../types.ts';
import type { Counted } from './fact.ts';

export type ObservedValue = NonNullable<ReportedFact['observed']>;

/** A standard uncertainty is doubled to cover about 95 % (JCGM 100:2008, 6.2; from memory). */
const COVERAGE = 2;

/** The first height that there is, in the order of `challenge.heightCounts`; null when there is none of them. */
export function countedHeight(model: Counted | null, observed: Observed, challenge: Challenge): Counted | null {
  for (const source of challenge.heightCounts) {
    if (source === 'model') {
      if (model !== null) return model;
      continue;
    }
    const seen = observedBy(source, observed, challenge);
    // A reading off this one build: no other build shares its error.
    if (seen !== null) return { value: seen.value, tolerance: seen.tolerance, errors: {}, source: 'observed' };
  }
  return null;
}

/** What was observed of the height: the kind of observation that counts first, else the ruler, else the photo. */
export function observedHeight(observed: Observed, challenge: Challenge): ObservedValue | null {
  for (const source of [...challenge.heightCounts, 'ruler', 'photo'] as const) {
    const seen = source === 'model' ? null : observedBy(source, observed, challenge);
    if (seen !== null) return seen;
  }
  return null;
}

function observedBy(
  source: Exclude<HeightSource, 'model'>,
  { heightReadingsMm, photoHeightMm }: Observed,
  challenge: Challenge,
): ObservedValue | null {
  if (source === 'ruler') return heightReadingsMm.length === 0 ? null : meanReading(heightReadingsMm, challenge);
  if (photoHeightMm === undefined) return null;
  return { value: photoHeightMm, tolerance: challenge.measuringErrorMm, readings: [] };
}

/**
 * The mean of the readings. One reading carries the error that the challenge states; several show it themselves, as half
 * their range. It is never less than what the divisions of the ruler leave open (JCGM 100:2008, F.2.2.1; from memory):
 * a ruler of whole inches cannot tell 3 mm.
 */
function meanReading(readings: readonly number[], challenge: Challenge): ObservedValue {
  const value = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
  const halfRange = (Math.max(...readings) - Math.min(...readings)) / 2;
  const tolerance =
    readings.length === 1 ? readingErrorMm(challenge) : Math.max(halfRange, resolutionMm(challenge.ruler));
  return { value, tolerance, readings };
}

/** The error of one reading of a height, mm (about 95 %). */
export const readingErrorMm = ({ measuringErrorMm, ruler }: Pick<Challenge, 'measuringErrorMm' | 'ruler'>): number =>
  Math.max(measuringErrorMm, resolutionMm(ruler));

const resolutionMm = (ruler: Challenge['ruler']): number => (COVERAGE * rulerOf(ruler).stepMm) / Math.sqrt(12);
