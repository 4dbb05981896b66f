// Two sides that are nearly parallel, compared where they run alongside each other; mm.
// Both sides of a pair ask here in the same order, and so get the same answer: else both might give way to the other, and
// a stretch of boundary would be lost, or neither, and it would be counted twice.

import type { Side } from './edge.ts';
import { alongOf, leftOf } from './edge.ts';

/** How two sides lie, told in places along `side`, the one that was asked about. */
export type Meeting =
  /** They do not run alongside each other. */
  | { readonly kind: 'apart' }
  /** They coincide between two places. */
  | { readonly kind: 'shared'; readonly from: number; readonly to: number }
  /** They cross. */
  | { readonly kind: 'crossing'; readonly at: number }
  /** They run beside each other without meeting. */
  | { readonly kind: 'beside' };

/**
 * How `side` and `other` lie to each other. `sideFirst` says which of them is the lower in the order of the walk.
 * They coincide where they are no further apart than `noiseMm` over their whole common stretch.
 */
export function meetingOf(side: Side, other: Side, sideFirst: boolean, noiseMm: number): Meeting {
  const first = sideFirst ? side : other;
  const second = sideFirst ? other : side;
  const along = [alongOf(first, second.ax, second.ay), alongOf(first, second.bx, second.by)] as const;
  const left = [leftOf(first, second.ax, second.ay), leftOf(first, second.bx, second.by)] as const;
  const from = Math.max(0, Math.min(along[0], along[1]));
  const to = Math.min(first.lengthMm, Math.max(along[0], along[1]));
  if (to <= from) return { kind: 'apart' };
  const slope = (left[1] - left[0]) / (along[1] - along[0]);
  const apartFrom = left[0] + slope * (from - along[0]);
  const apartTo = left[0] + slope * (to - along[0]);
  const place = (x: number): number =>
    sideFirst ? x : ((x - along[0]) / (along[1] - along[0])) * second.lengthMm;
  if (Math.max(Math.abs(apartFrom), Math.abs(apartTo)) <= noiseMm) {
    const ends = [place(from), place(to)] as const;
    return { kind: 'shared', from: Math.min(...ends), to: Math.max(...ends) };
  }
  if (apartFrom * apartTo < 0) {
    return { kind: 'crossing', at: place(from + ((to - from) * apartFrom) / (apartFrom - apartTo)) };
  }
  return { kind: 'beside' };
}
