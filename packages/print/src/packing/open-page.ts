// A page that is being filled.

import type { Vec2 } from '@cairnmark/geometry';
import type { BitPage, Cell } from './bit-page.ts';
import { emptyPage, laidOn } from './bit-page.ts';
import type { Spans } from './find-place.ts';
import { findPlace, spansOf } from './find-place.ts';
import { CELL_MM } from './grid.ts';
import type { Pose } from './poses.ts';
import type { Prepared, Shape } from './shapes.ts';
import type { Placement, Space } from './types.ts';

export interface OpenPage {
  readonly page: BitPage;
  readonly spans: Spans;
  readonly items: readonly Prepared[];
  /** In the order of the items. */
  readonly placements: readonly Placement[];
}

export function newPage(space: Space): OpenPage {
  const page = emptyPage(space);
  return { page, spans: spansOf(page), items: [], placements: [] };
}

/** The page with the item laid there. */
export function withItem({ page, items, placements }: OpenPage, one: Prepared, { pose, cell }: Spot): OpenPage {
  const laid = laidOn(page, pose, cell);
  const shiftMm: Vec2 = [pose.movedMm[0] + cell.column * CELL_MM, pose.movedMm[1] + cell.row * CELL_MM];
  return {
    page: laid,
    spans: spansOf(laid),
    items: [...items, one],
    placements: [...placements, { id: one.item.id, turnRad: pose.turnRad, shiftMm }],
  };
}

/** What has a page to itself lies straight there if it can. */
export function tidied(open: OpenPage, space: Space): OpenPage {
  const [only, ...others] = open.items;
  if (only === undefined || others.length > 0) return open;
  const straight = { ...only.shape, poses: only.shape.poses.filter(({ pose }) => pose.straight) };
  const page = newPage(space);
  const spot = bestSpot(page, straight);
  return spot === null ? open : withItem(page, only, spot);
}

export interface Spot {
  readonly pose: Pose;
  readonly cell: Cell;
}

/** Where the shape reaches least high; of two such turns a straight one, then the earlier. */
export function bestSpot({ page, spans }: OpenPage, { poses }: Shape): Spot | null {
  let best: Spot | null = null;
  for (const { pose, probes } of poses) {
    if (pose.cells > page.free) continue;
    const mostTop = best === null ? page.rows : topOf(best);
    const cell = findPlace(page, spans, pose, probes, mostTop - pose.rows);
    if (cell === null) continue;
    const spot = { pose, cell };
    const isBetter = best === null || topOf(spot) < topOf(best) || (pose.straight && !best.pose.straight);
    if (isBetter) best = spot;
  }
  return best;
}

const topOf = ({ pose, cell }: Spot): number => cell.row + pose.rows;
