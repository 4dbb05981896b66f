// Two sides that are nearly parallel, compared where they run alongside each other; mm.
// Both sides of a pair ask here in the same order, and so get the same answer: else both might give way to the other, and
// a stretch of boundary would be lost, or neither, and it would be counted twice.

import type { Side } from './edge.ts';
import { leftOf, placeOf } from './edge.ts';

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
  const start = placeOf(first, second.ax, second.ay);
  const end = placeOf(first, second.bx, second.by);
  const from = Math.max(0, Math.min(start, end));
  const to = Math.min(1, Math.max(start, end));
  if (to <= from) return APART;
  const startLeft = leftOf(first, second.ax, second.ay);
  const slope = (leftOf(first, second.bx, second.by) - startLeft) / (end - start);
  const apartFrom = startLeft + slope * (from - start);
  const apartTo = startLeft + slope * (to - start);
  const place = (onFirst: number): number => (sideFirst ? onFirst : (onFirst - start) / (end - start));
  if (Math.max(Math.abs(apartFrom), Math.abs(apartTo)) <= noiseMm) {
    return { kind: 'shared', from: Math.min(place(from), place(to)), to: Math.max(place(from), place(to)) };
  }
  if (apartFrom * apartTo < 0) {
    return { kind: 'crossing', at: place(from + ((to - from) * apartFrom) / (apartFrom - apartTo)) };
  }
  return BESIDE;
}

const APART: Meeting = { kind: 'apart' };
const BESIDE: Meeting = { kind: 'beside' };
