// The build as the scene shows it: at rest, or with one piece on its way.

import type { Ghost } from '@cairnmark/editing';
import type { PlacedPiece, Stack } from '@cairnmark/geometry';
import type { ScenePicture, Why } from '../../scene/picture.ts';

export interface Dragging {
  /** The pieces that stay, in their places. */
  readonly others: readonly PlacedPiece[];
  /** null: over no place. */
  readonly ghost: Ghost | null;
  /** Where a piece was last that may not be put where the pointer is. */
  readonly refused: boolean;
}

export function pictureOf({
  stack,
  picked,
  dragging,
  why,
  unit,
  heightText,
}: {
  readonly stack: Stack;
  readonly picked: number | null;
  readonly dragging: Dragging | null;
  readonly why: Why | null;
  readonly unit: 'cm' | 'in';
  readonly heightText: string | null;
}): ScenePicture {
  if (dragging === null) return { pieces: stack.pieces, picked, ghost: null, why, unit, heightText };
  const { others, ghost, refused } = dragging;
  const shown = ghost === null ? null : { piece: ghost.placed, isRefused: refused, label: null };
  return { pieces: others, picked: null, ghost: shown, why: null, unit, heightText };
}
