// Boundaries as they are handed out: straight lines and true arcs, in the frame of the table, mm.

import type { Vec2 } from '../kernel/vec.ts';
import { add2 } from '../kernel/vec.ts';
import type { Edge } from './edge.ts';
import { endOf, xAt, yAt } from './edge.ts';
import type { Span } from './spans.ts';
import type { Strand } from './strands.ts';

export interface BoundaryLine {
  readonly kind: 'line';
  readonly from: Vec2;
  readonly to: Vec2;
}

/** Counter-clockwise from one angle to the other, rad, between 0 and a full turn: an arc that passes 0 comes as two. */
export interface BoundaryArc {
  readonly kind: 'arc';
  readonly centre: Vec2;
  readonly radiusMm: number;
  readonly fromRad: number;
  readonly toRad: number;
}

/** A straight line across a gap that was counted as closed: it lies on no outline. */
export interface BoundaryMouth {
  readonly kind: 'mouth';
  readonly from: Vec2;
  readonly to: Vec2;
}

export type BoundaryPart = BoundaryLine | BoundaryArc | BoundaryMouth;

/** A strand, edge by edge, in the frame of the table; `origin` is where its own frame lies. */
export function boundaryParts(strand: Strand, origin: Vec2): readonly BoundaryPart[] {
  const { edges, first, from, to, edgeCount } = strand;
  return Array.from({ length: edgeCount }, (_, k) => {
    const edge = edges[(first.index + k) % edges.length] ?? first;
    const span = { from: k === 0 ? from : 0, to: k === edgeCount - 1 ? to : endOf(edge) };
    return partOn(edge, span, strand.acrossMm > 0, origin);
  });
}

function partOn(edge: Edge, { from, to }: Span, isAcross: boolean, origin: Vec2): BoundaryPart {
  if (edge.kind === 'rim') {
    return { kind: 'arc', centre: add2([edge.x, edge.y], origin), radiusMm: edge.radiusMm, fromRad: from, toRad: to };
  }
  const place = (at: number): Vec2 => add2([xAt(edge, at), yAt(edge, at)], origin);
  return { kind: isAcross ? 'mouth' : 'line', from: place(from), to: place(to) };
}
