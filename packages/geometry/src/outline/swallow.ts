// Pieces that lie wholly inside another, copies among them, add nothing to a union: they are left out before the walk.

import type { Box } from './box.ts';
import { leftOf } from './edge.ts';
import type { DiscPiece, Piece, PolygonPiece } from './piece.ts';

/**
 * For each piece whether it adds anything: false when it lies inside an earlier one to within `noiseMm`. The pieces come
 * largest first; `near` are the indices of those whose boxes meet.
 */
export function areVisible(
  pieces: readonly Piece[],
  near: readonly (readonly number[])[],
  noiseMm: number,
): readonly boolean[] {
  const visible: boolean[] = [];
  pieces.forEach((piece, i) => {
    const isSwallowed = (near[i] ?? []).some((j) => {
      const other = pieces[j];
      return j < i && visible[j] === true && other !== undefined && liesInside(piece, other, noiseMm);
    });
    visible.push(!isSwallowed);
  });
  return visible;
}

const boxInside = (inner: Box, outer: Box, noiseMm: number): boolean =>
  inner.minX >= outer.minX - noiseMm &&
  inner.maxX <= outer.maxX + noiseMm &&
  inner.minY >= outer.minY - noiseMm &&
  inner.maxY <= outer.maxY + noiseMm;

function liesInside(piece: Piece, other: Piece, noiseMm: number): boolean {
  if (!boxInside(piece, other, noiseMm)) return false;
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
