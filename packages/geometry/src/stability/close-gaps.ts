// Measured sizes are never quite equal: a slab on pillars of 50.0 and 48.5 mm lies on both in the class and on one in the
// sums. Pieces that come within a stated slack of what is below them rest on it too. Frame of the table, mm.

import { SIDE_BY_SIDE_MM } from '../kernel/tolerance.ts';
import { dropHeight } from '../stack/drop-height.ts';
import { planOverlapDepth } from '../stack/plan-overlap.ts';
import type { PlacedPiece, Stack, Support } from '../stack/types.ts';

/** The stack with a support wherever a gap straight down is no wider than `slackMm`; `closedMm` says how wide it was. */
export function closeGaps(stack: Stack, slackMm: number): Stack {
  const supports = stack.pieces.flatMap((upper) => {
    const known = stack.supports.filter((support) => support.upper === upper.index);
    const others = stack.pieces.filter(
      (lower) => lower !== upper && !known.some((support) => support.lower === lower.index),
    );
    return [...known, ...others.flatMap((lower) => supportWithin(upper, lower, slackMm))];
  });
  return { ...stack, supports };
}

/** None when the lower piece is not below it, stands beside it, or is too far down. */
function supportWithin(upper: PlacedPiece, lower: PlacedPiece, slackMm: number): readonly Support[] {
  if (lower.bottomMm >= upper.bottomMm || lower.topMm < upper.bottomMm - slackMm) return [];
  if (planOverlapDepth(upper.outline, lower.outline) <= SIDE_BY_SIDE_MM) return [];
  const drop = dropHeight(upper.body, lower.body);
  if (drop === null || drop.heightMm > 0 || -drop.heightMm > slackMm) return [];
  return [{ upper: upper.index, lower: lower.index, normal: drop.normal, closedMm: -drop.heightMm }];
}
