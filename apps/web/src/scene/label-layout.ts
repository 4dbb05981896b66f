// Where labels go: near what they name, on nothing that matters, never on each other. px from the upper left corner.

import type { Vec2 } from '@cairnmark/geometry';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface LabelRequest {
  readonly anchor: Vec2;
  readonly width: number;
  readonly height: number;
  /** True for one that is left out where its best place is not a good one. */
  readonly isSpare?: boolean;
}

/**
 * A place inside `frame` for each label, in the same order; null for one that fits nowhere, and for a spare one that has no
 * good place. `avoid`: boxes to keep clear
 * where there is room elsewhere. Labels placed earlier are always kept clear.
 */
export function layOutLabels(
  labels: readonly LabelRequest[],
  avoid: readonly Box[],
  frame: Box,
): readonly (Box | null)[] {
  const placed: Placed[] = [];
  return labels.map((label) => {
    let best: Box | null = null;
    let least = label.isSpare === true ? SPARE_COST : Number.POSITIVE_INFINITY;
    for (const place of placesIn(frame, label)) {
      const cost = costOf(place, label, avoid, placed);
      if (cost < least) [best, least] = [place, cost];
    }
    if (best !== null) placed.push({ box: best, anchor: label.anchor });
    return best;
  });
}

/** The point of a box from which a line to the anchor is drawn: the middle of the side that faces it. */
export function leaderFrom({ left, top, width, height }: Box, [x, y]: Vec2): Vec2 {
  const nearX = Math.min(left + width, Math.max(left, x));
  const nearY = Math.min(top + height, Math.max(top, y));
  if (x < left || x > left + width) return [nearX, Math.min(top + height - INDENT_PX, Math.max(top + INDENT_PX, y))];
  return [nearX, nearY];
}

interface Placed {
  readonly box: Box;
  readonly anchor: Vec2;
}

/** px between places that are tried. */
const STEP_PX = 12;
const GAP_PX = 8;
/** px. A leader about this long is best: the label stands clear of the mark. */
const LEADER_PX = 44;
const INDENT_PX = 6;
/** Costs in px of leader, for each covered px of a box, for each crossing. */
const COVERED = 0.1;
const CROSSED = 400;
/** A spare label may cover little, cross nothing, and its leader may be some 3 cm longer than is best. */
const SPARE_COST = 120;

function placesIn(frame: Box, { width, height }: LabelRequest): readonly Box[] {
  const across = Math.floor((frame.width - width) / STEP_PX);
  const down = Math.floor((frame.height - height) / STEP_PX);
  if (across < 0 || down < 0) return [];
  return Array.from({ length: (across + 1) * (down + 1) }, (_, k): Box => {
    const [column, row] = [k % (across + 1), Math.floor(k / (across + 1))];
    return { left: frame.left + column * STEP_PX, top: frame.top + row * STEP_PX, width, height };
  });
}

function costOf(place: Box, { anchor }: LabelRequest, avoid: readonly Box[], placed: readonly Placed[]): number {
  const wide = grown(place);
  if (placed.some(({ box }) => covered(wide, box) > 0)) return Number.POSITIVE_INFINITY;
  const from = leaderFrom(place, anchor);
  const length = Math.hypot(from[0] - anchor[0], from[1] - anchor[1]);
  const hidden = avoid.reduce((sum, box) => sum + covered(wide, box), 0);
  const crossings = placed.filter((other) => crosses(from, anchor, leaderFrom(other.box, other.anchor), other.anchor));
  const through = placed.filter(({ box }) => meetsBox(from, anchor, box));
  return Math.abs(length - LEADER_PX) + hidden * COVERED + (crossings.length + through.length) * CROSSED;
}

const grown = ({ left, top, width, height }: Box): Box => ({
  left: left - GAP_PX,
  top: top - GAP_PX,
  width: width + 2 * GAP_PX,
  height: height + 2 * GAP_PX,
});

/** px2 of `a` that `b` covers. */
function covered(a: Box, b: Box): number {
  const width = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const height = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return Math.max(0, width) * Math.max(0, height);
}

/** True when the two lines cross between their ends. */
function crosses(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const side = (p: Vec2, q: Vec2, r: Vec2): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function meetsBox(from: Vec2, to: Vec2, { left, top, width, height }: Box): boolean {
  const [a, b, c, d]: readonly Vec2[] = [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
  if (a === undefined || b === undefined || c === undefined || d === undefined) return false;
  return crosses(from, to, a, c) || crosses(from, to, b, d);
}
