// Boundaries as they are handed out: straight lines and true arcs, in the frame of the table, mm.

import type { Vec2 } from '../kernel/vec.ts';
import type { Strand } from './strands.ts';

export interface BoundaryLine {
  readonly kind: 'line';
  readonly from: Vec2;
  readonly to: Vec2;
}

/** Counter-clockwise from one angle to the other, rad; `toRad` is the larger. */
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

/** A strand, in the frame of the table; `origin` is where its own frame lies. */
export function boundaryPart(strand: Strand, origin: Vec2): BoundaryPart {
  const { edge, from, to } = strand;
  const place = (x: number, y: number): Vec2 => [x + origin[0], y + origin[1]];
  if (edge.kind === 'rim') {
    return { kind: 'arc', centre: place(edge.x, edge.y), radiusMm: edge.radiusMm, fromRad: from, toRad: to };
  }
  return {
    kind: strand.acrossMm > 0 ? 'mouth' : 'line',
    from: place(strand.startX, strand.startY),
    to: place(strand.endX, strand.endY),
  };
}
