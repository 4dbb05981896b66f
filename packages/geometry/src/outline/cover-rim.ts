// Which stretches of the rim of a disc lie outside another piece; angles in rad from 0 to a full turn.
// No point is ever tested: angles come from lengths in factored form, so that near-equal and tangent discs come out right.

import type { Rim, Side } from './edge.ts';
import { FULL_TURN, leftOf } from './edge.ts';
import type { Spans } from './spans.ts';
import { arcSpans, joined, NO_SPANS, WHOLE_RIM } from './spans.ts';

/**
 * The stretches of `rim` outside another disc. With d the distance of the centres, R and r the radii, half the angle a
 * that is covered follows from tan^2(a/2) = (r + R - d)(r - R + d) / (d + R - r)(d + R + r), by the law of cosines. Tangent to within `roundingMm`, they
 * do not cover each other.
 */
export function rimOutsideDisc(rim: Rim, other: Rim, roundingMm: number): Spans {
  const dx = other.x - rim.x;
  const dy = other.y - rim.y;
  const distance = Math.sqrt(dx * dx + dy * dy);
  const more = rim.radiusMm - other.radiusMm;
  const overlap = rim.radiusMm + other.radiusMm - distance;
  const [reach, left] = [distance - more, distance + more];
  if (overlap <= roundingMm || reach <= roundingMm) return WHOLE_RIM;
  if (left <= roundingMm) return NO_SPANS;
  const half = 2 * Math.atan2(Math.sqrt(overlap * reach), Math.sqrt(left * (rim.radiusMm + other.radiusMm + distance)));
  return arcSpans(Math.atan2(dy, dx) + half, FULL_TURN - 2 * half);
}

/** The stretches of `rim` outside a convex polygon: what lies beyond the line of any of its sides. */
export function rimOutsidePolygon(rim: Rim, sides: readonly Side[], roundingMm: number): Spans {
  const { x, y, radiusMm } = rim;
  const beyond: Spans[] = [];
  for (const side of sides) {
    const inside = leftOf(side, x, y);
    if (inside >= radiusMm - roundingMm) continue;
    if (inside <= roundingMm - radiusMm) return WHOLE_RIM;
    const half = Math.atan2(Math.sqrt((radiusMm - inside) * (radiusMm + inside)), inside);
    beyond.push(arcSpans(Math.atan2(-side.ux, side.uy) - half, 2 * half));
  }
  return joined(beyond.flat());
}
