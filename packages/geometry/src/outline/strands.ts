// What is left of the boundaries as strands: each runs on from edge to edge along the boundary of one piece, with the
// counted region on its left. It ends where the boundary goes into another piece, or at the foot of a link; mm.

import type { Foot } from './closest.ts';
import type { Edge } from './edge.ts';
import { areaUnder, endOf, lengthBetween, mmPerPlace, sideBetween, xAt, yAt } from './edge.ts';
import type { Filling } from './fillings.ts';
import type { NarrowPlace } from './links.ts';
import type { Piece } from './piece.ts';
import type { Span, Spans } from './spans.ts';
import { NO_SPANS, WHOLE_SIDE } from './spans.ts';
import type { EdgesLeft } from './walk.ts';

export interface Strand {
  /** The edges of its piece, in order. */
  readonly edges: readonly Edge[];
  readonly first: Edge;
  /** Where it starts on its first edge. */
  readonly from: number;
  last: Edge;
  /** Where it ends on its last edge. */
  to: number;
  /** How many edges it runs along. */
  edgeCount: number;
  lengthMm: number;
  /** Its share in the area that it bounds, about the origin. */
  areaMm2: number;
  /** The width of the gap that it goes across, as a mouth or a link; 0 on an outline. */
  readonly acrossMm: number;
  /** The strand that follows, when it is known; a whole boundary follows itself. */
  next: Strand | undefined;
  /** True when it follows a strand. */
  follows: boolean;
}

/** The strands of a piece, in order. */
export function strandsOfPiece(piece: Piece, left: EdgesLeft, feet: readonly Foot[], nodeMm: number): Strand[] {
  const strands: Strand[] = [];
  let open: Strand | undefined;
  for (const edge of piece.edges) {
    let upToEnd: Strand | undefined;
    for (const part of partsOf(left[edge.index] ?? NO_SPANS, edge, feet, nodeMm)) {
      const runsOn = part.from === 0 && open !== undefined && !hasFootAtStart(edge, feet, nodeMm);
      const strand =
        runsOn && open !== undefined ? lengthened(open, edge, part.to) : strandOn(piece.edges, edge, part, 0);
      if (!runsOn) strands.push(strand);
      if (part.to === endOf(edge)) upToEnd = strand;
    }
    open = upToEnd;
  }
  const [first] = strands;
  const [edge] = piece.edges;
  if (open !== undefined && first?.first === edge && first?.from === 0 && !hasFootAtStart(first.first, feet, nodeMm)) {
    follow(open, first);
  }
  return strands;
}

/** The mouths of a filling that are free. */
export function strandsOfFilling({ mouths }: Filling, left: EdgesLeft): Strand[] {
  return mouths.flatMap((mouth) =>
    (left[mouth.index] ?? NO_SPANS).map((span) => strandOn([mouth], mouth, span, mouth.lengthMm)),
  );
}

/** A link, there and back; none where it has no length. */
export function strandsOfLink({ onA, onB, gapMm }: NarrowPlace, nodeMm: number): Strand[] {
  if (gapMm <= nodeMm) return [];
  return [
    sideBetween([onA.x, onA.y], [onB.x, onB.y], 0, false),
    sideBetween([onB.x, onB.y], [onA.x, onA.y], 0, false),
  ].flatMap((line) => WHOLE_SIDE.map((span) => strandOn([line], line, span, gapMm)));
}

/** Makes `after` the strand that follows `before`. */
export function follow(before: Strand, after: Strand): void {
  before.next = after;
  after.follows = true;
}

function strandOn(edges: readonly Edge[], edge: Edge, { from, to }: Span, acrossMm: number): Strand {
  return {
    edges,
    first: edge,
    from,
    last: edge,
    to,
    edgeCount: 1,
    lengthMm: lengthBetween(edge, from, to),
    areaMm2: areaUnder(edge, from, to),
    acrossMm,
    next: undefined,
    follows: false,
  };
}

/** The strand run on along the next edge, up to a place on it. */
function lengthened(strand: Strand, edge: Edge, to: number): Strand {
  strand.last = edge;
  strand.to = to;
  strand.edgeCount += 1;
  strand.lengthMm += lengthBetween(edge, 0, to);
  strand.areaMm2 += areaUnder(edge, 0, to);
  return strand;
}

/** The spans of an edge, parted where a foot of a link stands on it. */
function partsOf(spans: Spans, edge: Edge, feet: readonly Foot[], nodeMm: number): Spans {
  if (feet.length === 0) return spans;
  const nearby = nodeMm / mmPerPlace(edge);
  const cuts = feet
    .filter((foot) => foot.edge === edge)
    .map((foot) => foot.at)
    .sort((a, b) => a - b);
  const parts: Span[] = [];
  for (const span of spans) {
    let from = span.from;
    for (const cut of cuts) {
      if (cut <= from + nearby || cut >= span.to - nearby) continue;
      parts.push({ from, to: cut });
      from = cut;
    }
    parts.push({ from, to: span.to });
  }
  return parts;
}

const hasFootAtStart = (edge: Edge, feet: readonly Foot[], nodeMm: number): boolean =>
  feet.some(({ x, y }) => Math.hypot(x - xAt(edge, 0), y - yAt(edge, 0)) <= nodeMm);
