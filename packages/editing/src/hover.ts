// A piece held over a place, whether or not it may be put there: so that a hand sees what it holds also where it would
// settle nowhere. mm.

import type { LaidPiece, PlacedPiece } from '@cairnmark/geometry';
import { checkLayout, placePiece } from '@cairnmark/geometry';
import { relaid, turnOf } from './grid.ts';
import { restingOf } from './restings.ts';
import type { Bench, FromShelf, Pieces } from './types.ts';

/** Just above the surface that was pointed at, lined up with nothing; null for a piece that is not known, or far out. */
export function hoverAt(
  pieces: Pieces,
  what: number | FromShelf,
  { xMm, yMm, surfaceMm }: { readonly xMm: number; readonly yMm: number; readonly surfaceMm: number },
  { solids }: Pick<Bench, 'solids'>,
): PlacedPiece | null {
  const held = typeof what === 'number' ? pieces[what] : fromShelf(what, { solids });
  if (held === undefined) return null;
  const checked = checkLayout([relaid(held, { xMm, yMm, on: undefined })], solids);
  const [known] = checked.ok ? checked.value : [];
  return known === undefined ? null : placePiece(known, pieces.length, Math.max(0, surfaceMm));
}

/** Also a piece of which none is left. */
function fromShelf({ kind, resting, degrees }: FromShelf, { solids }: Pick<Bench, 'solids'>): LaidPiece | undefined {
  const known = restingOf(kind, resting, { solids });
  return known.ok ? { kind, resting: known.value, xMm: 0, yMm: 0, turnRad: turnOf(degrees ?? 0) } : undefined;
}
