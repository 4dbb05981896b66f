// What values are rounded to before they are compared, until somebody types another step.

import type { Challenge } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import { rulerOf } from '@cairnmark/geometry';

/** In the engine's unit; a length as the ruler of the challenge reads. `one`: one of the unit that the class reads. */
export function usualStep(measure: string, challenge: Challenge, one: number): number {
  const unit = unitOf(measure);
  // Ratios of two amounts are lengths as numbers, but no ruler reads them.
  if (unit === 'ratio' || RATIOS.includes(measure)) return one / 10;
  return unit === 'mm' ? rulerOf(challenge.ruler).stepMm : one;
}

const RATIOS: readonly string[] = ['volume-per-paper', 'area-to-perimeter'];
