// Pieces that lie wholly inside another, copies among them, add nothing to a union: they are left out before the walk.

import { leftOf } from './edge.ts';
import { nearBoxes } from './near.ts';
import type { DiscPiece, Piece, PolygonPiece } from './piece.ts';

/** The pieces, largest first as they came, without those that lie inside a larger one to within `noiseMm`. */
export function unswallowed(pieces: readonly Piece[], noiseMm: number): readonly Piece[] {
  const near = nearBoxes(pieces, noiseMm);
  const kept = new Set<number>();
  pieces.forEach((piece, i) => {
    const larger = (near[i] ?? []).filter((j) => j < i && kept.has(j));
    const inside = larger.some((j) => {
      const other = pieces[j];
      return other !== undefined && liesInside(piece, other, noiseMm);
    });
    if (!inside) kept.add(i);
  });
  return pieces.filter((_, i) => kept.has(i));
}

function liesInside(piece: Piece, other: Piece, noiseMm: number): boolean {
  const boxInside =
    piece.minX >= other.minX - noiseMm &&
    piece.maxX <= other.maxX + noiseMm &&
    piece.minY >= other.minY - noiseMm &&
    piece.maxY <= other.maxY + noiseMm;
  if (!boxInside) return false;
  if (other.kind === 'disc') {
    return piece.kind === 'disc' ? discInDisc(piece, other, noiseMm) : polygonInDisc(piece, other, noiseMm);
  }
  return piece.kind === 'disc' ? discInPolygon(piece, other, noiseMm) : polygonInPolygon(piece, other, noiseMm);
}

function discInDisc({ rim }: DiscPiece, { rim: other }: DiscPiece, noiseMm: number): boolean {
  return Math.hypot(rim.x - other.x, rim.y - other.y) <= other.radiusMm - rim.radiusMm + noiseMm;
}

function polygonInDisc(piece: PolygonPiece, { rim }: DiscPiece, noiseMm: number): boolean {
  return piece.edges.every(({ ax, ay }) => Math.hypot(ax - rim.x, ay - rim.y) <= rim.radiusMm + noiseMm);
}

function discInPolygon({ rim }: DiscPiece, other: PolygonPiece, noiseMm: number): boolean {
  return other.edges.every((side) => leftOf(side, rim.x, rim.y) >= rim.radiusMm - noiseMm);
}

function polygonInPolygon(piece: PolygonPiece, other: PolygonPiece, noiseMm: number): boolean {
  return piece.edges.every(({ ax, ay }) => other.edges.every((side) => leftOf(side, ax, ay) >= -noiseMm));
}
