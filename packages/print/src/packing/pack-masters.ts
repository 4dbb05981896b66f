// Pages to photocopy, each of one kind alone, with as many sets of it as there is room for. mm.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { PrintIssue } from '../issue.ts';
import type { OpenPage } from './open-page.ts';
import { bestSpot, tidied, withItem } from './open-page.ts';
import { pack } from './pack-sheets.ts';
import type { Prepared } from './shapes.ts';
import { prepared } from './shapes.ts';
import type { Item, Placement, Progress, Space } from './types.ts';

export interface Master {
  readonly kind: string;
  /** A set of the kind; usually one page. An id stands there once for each set. */
  readonly pages: readonly (readonly Placement[])[];
  /** How many sets are on these pages. */
  readonly sets: number;
}

/**
 * The pages of each kind, in the order in which the kinds first come; `items` holds one set of each. Null where `progress`
 * stopped the work; refused and thrown like `packSheets`.
 */
export function packMasters(
  items: readonly Item[],
  space: Space,
  progress: Progress,
): Result<readonly Master[] | null, PrintIssue> {
  const issues: PrintIssue[] = [];
  const all = prepared(items, space, (issue) => issues.push(issue));
  if (issues.length > 0) return failure(issues);
  const masters: Master[] = [];
  let placed = 0;
  for (const [kind, set] of byKind(all)) {
    const pages = pack(set, space, (some) => progress(placed + some, all.length));
    if (pages === null) return success(null);
    placed += set.length;
    masters.push(filled(kind, pages, set, space));
  }
  return success(masters);
}

function byKind(all: readonly Prepared[]): ReadonlyMap<string, readonly Prepared[]> {
  const kinds = new Map<string, Prepared[]>();
  for (const one of all) kinds.set(one.item.kind, [...(kinds.get(one.item.kind) ?? []), one]);
  return kinds;
}

/** A set that takes several pages stays alone; a page gets further whole sets while they fit. */
function filled(kind: string, pages: readonly OpenPage[], set: readonly Prepared[], space: Space): Master {
  let [page, sets] = [pages[0], 1];
  for (let more = page; pages.length === 1 && more !== undefined; more = withSet(more, set)) {
    if (more !== page) sets += 1;
    page = more;
  }
  const all = pages.length === 1 && page !== undefined ? [page] : pages;
  return { kind, pages: all.map((one) => tidied(one, space).placements), sets };
}

/** The page with a further set, largest first; undefined where some of it has no room. */
const withSet = (page: OpenPage, set: readonly Prepared[]): OpenPage | undefined =>
  [...set]
    .sort((a, b) => b.shape.boxMm2 - a.shape.boxMm2)
    .reduce<OpenPage | undefined>((open, one) => {
      const spot = open === undefined ? null : bestSpot(open, one.shape);
      return open === undefined || spot === null ? undefined : withItem(open, one, spot);
    }, page);
