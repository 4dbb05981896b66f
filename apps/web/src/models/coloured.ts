// The colours in which the app draws solids, read from the page; they are the same in light and dark.

import { colourToken, familyOf } from '../drawing/family.ts';
import type { ModelPiece } from './model.ts';
import type { NamedPiece } from './placed-pieces.ts';

export function coloured(pieces: readonly NamedPiece[]): readonly ModelPiece[] {
  const style = getComputedStyle(document.documentElement);
  return pieces.map((piece) => {
    return { ...piece, colour: style.getPropertyValue(colourToken(familyOf(piece.solid.id))).trim() };
  });
}
