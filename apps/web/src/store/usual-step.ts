// What values are rounded to before they are compared, until somebody types another step.

import type { Challenge } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import type { RulerId } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { RankingKey } from '@cairnmark/scoring';

/** In the engine's unit; a length as the ruler of the challenge reads. `one`: one of the unit that the class reads. */
export function usualStep(measure: string, challenge: Challenge, one: number): number {
  // Ratios of two amounts are lengths as numbers, but no ruler reads them.
  if (unitOf(measure) === 'ratio' || RATIOS.includes(measure)) return one / 10;
  return isRead(measure) ? rulerOf(challenge.ruler).stepMm : one;
}

/** A step of whole divisions of one ruler becomes one of the next; any other step was typed, and stays. */
export function stepOnRuler({ roundTo, ...key }: RankingKey, before: RulerId, after: RulerId): RankingKey {
  const onRuler = isRead(key.by) && roundTo === rulerOf(before).stepMm;
  return { ...key, roundTo: onRuler ? rulerOf(after).stepMm : roundTo };
}

/** A ruler shows it. */
const isRead = (measure: string): boolean => unitOf(measure) === 'mm' && !RATIOS.includes(measure);

const RATIOS: readonly string[] = ['volume-per-paper', 'area-to-perimeter'];
