// Outlines packed on few pages: the largest first, each on the fullest page that has room for it, there in the turn and at
// the place in which it reaches least high. Greedy, and the same for the same items. mm.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { PrintIssue } from '../issue.ts';
import type { OpenPage } from './open-page.ts';
import { bestSpot, newPage, tidied, withItem } from './open-page.ts';
import type { Prepared } from './shapes.ts';
import { prepared } from './shapes.ts';
import type { Item, Placement, Progress, Space } from './types.ts';

/** What lies on each page; null where `progress` stopped the work. */
export type Packed = Result<readonly (readonly Placement[])[] | null, PrintIssue>;

/**
 * All items together, on as few pages as this way finds. Two outlines are at least 3 mm apart, and all are inside the
 * space. Refused with 'outline-too-large' at ["items", 3] for each that fits no page. Throws RangeError for an outline of
 * fewer than three corners.
 */
export function packSheets(items: readonly Item[], space: Space, progress: Progress): Packed {
  const issues: PrintIssue[] = [];
  const all = prepared(items, space, (issue) => issues.push(issue));
  if (issues.length > 0) return failure(issues);
  const pages = pack(all, space, progress);
  return success(pages?.map((page) => tidied(page, space).placements) ?? null);
}

/** The pages; null where the work was stopped. */
export function pack(all: readonly Prepared[], space: Space, progress: Progress): readonly OpenPage[] | null {
  const slots: Slot[] = [];
  const sorted = [...all].sort((a, b) => b.shape.boxMm2 - a.shape.boxMm2);
  for (const [placed, one] of sorted.entries()) {
    if (!progress(placed, sorted.length)) return null;
    putSomewhere(one, slots, space);
  }
  return progress(sorted.length, sorted.length) ? slots.map(({ open }) => open) : null;
}

interface Slot {
  open: OpenPage;
  /** Shapes that it has no room for, as it is now. */
  full: Set<string>;
}

function putSomewhere(one: Prepared, slots: Slot[], space: Space): void {
  const fullestFirst = [...slots].sort((a, b) => a.open.page.free - b.open.page.free);
  for (const slot of [...fullestFirst, null]) {
    if (slot?.full.has(one.shape.key)) continue;
    const open = slot?.open ?? newPage(space);
    const spot = bestSpot(open, one.shape);
    if (spot === null) {
      slot?.full.add(one.shape.key);
      continue;
    }
    const filled: Slot = { open: withItem(open, one, spot), full: new Set() };
    if (slot === null) slots.push(filled);
    else Object.assign(slot, filled);
    return;
  }
}
