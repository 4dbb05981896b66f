// What is left of the boundaries as strands: stretches of one edge each, with the counted region on their left, that
// follow each other where they meet at a corner of their piece; mm.

import type { Foot } from './closest.ts';
import type { Edge } from './edge.ts';
import { endOf, sideBetween, xAt, yAt } from './edge.ts';
import type { Filling } from './fillings.ts';
import type { NarrowPlace } from './links.ts';
import type { Piece } from './piece.ts';
import type { Span, Spans } from './spans.ts';
import { NO_SPANS } from './spans.ts';
import type { EdgesLeft } from './walk.ts';

export interface Strand extends Span {
  readonly edge: Edge;
  readonly startX: number;
  readonly startY: number;
  readonly endX: number;
  readonly endY: number;
  /** The width of the gap that it goes across, as a mouth or a link; 0 for a stretch of an outline. */
  readonly acrossMm: number;
  /** The strand that follows, when it is known. */
  next: Strand | undefined;
  /** True when it follows another. */
  follows: boolean;
}

/** The strands of a piece, in order; none runs past a foot of a link. */
export function strandsOfPiece(piece: Piece, left: EdgesLeft, feet: readonly Foot[], nodeMm: number): Strand[] {
  const strands: Strand[] = [];
  const joinAt = (before: Strand | undefined, strand: Strand | undefined): void => {
    if (before !== undefined && strand?.from === 0 && !hasFootAtStart(strand, feet, nodeMm)) follow(before, strand);
  };
  let before: Strand | undefined;
  for (const edge of piece.edges) {
    const onEdge = partsOf(left[edge.index] ?? NO_SPANS, edge, feet, nodeMm).map((part) => strandOn(edge, part, 0));
    joinAt(before, onEdge[0]);
    strands.push(...onEdge);
    const last = onEdge.at(-1);
    before = last?.to === endOf(edge) ? last : undefined;
  }
  const [first] = strands;
  if (first?.edge === piece.edges[0]) joinAt(before, first);
  return strands;
}

/** The mouths of a filling that are free. */
export function strandsOfFilling({ mouths }: Filling, left: EdgesLeft): Strand[] {
  return mouths.flatMap((mouth) =>
    (left[mouth.index] ?? NO_SPANS).map((span) => strandOn(mouth, span, mouth.lengthMm)),
  );
}

/** A link, there and back; none where it has no length. */
export function strandsOfLink({ onA, onB, gapMm }: NarrowPlace, nodeMm: number): Strand[] {
  if (gapMm <= nodeMm) return [];
  const between = (p: Foot, q: Foot): Strand => {
    const line = sideBetween([p.x, p.y], [q.x, q.y], 0, false);
    return strandOn(line, { from: 0, to: line.lengthMm }, gapMm);
  };
  return [between(onA, onB), between(onB, onA)];
}

/** Makes `after` the strand that follows `before`. */
export function follow(before: Strand, after: Strand): void {
  before.next = after;
  after.follows = true;
}

function strandOn(edge: Edge, { from, to }: Span, acrossMm: number): Strand {
  return {
    edge,
    from,
    to,
    startX: xAt(edge, from),
    startY: yAt(edge, from),
    endX: xAt(edge, to),
    endY: yAt(edge, to),
    acrossMm,
    next: undefined,
    follows: false,
  };
}

/** The spans of an edge, parted where a foot of a link stands on it. */
function partsOf(spans: Spans, edge: Edge, feet: readonly Foot[], nodeMm: number): Spans {
  if (feet.length === 0) return spans;
  const nearby = edge.kind === 'rim' ? nodeMm / edge.radiusMm : nodeMm;
  const cuts = feet.filter((foot) => foot.edge === edge).map((foot) => foot.at).sort((a, b) => a - b);
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

const hasFootAtStart = ({ startX, startY }: Strand, feet: readonly Foot[], nodeMm: number): boolean =>
  feet.some(({ x, y }) => Math.hypot(x - startX, y - startY) <= nodeMm);
