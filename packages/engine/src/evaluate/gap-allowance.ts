// Up to which width gaps of a build count as closed.

import type { Layout } from '@cairnmark/geometry';
import { TRACED_GAP_MM } from '@cairnmark/geometry';
import type { Challenge } from '../types.ts';

/** mm. What the challenge says; where places come from photos, at least what those are off. */
export function gapAllowanceOf({ gapAllowanceMm }: Pick<Challenge, 'gapAllowanceMm'>, layout: Layout): number {
  const isTraced = layout.kind === 'traced' || (layout.kind === 'laid-out' && layout.traced === true);
  return isTraced ? Math.max(gapAllowanceMm, TRACED_GAP_MM) : gapAllowanceMm;
}
