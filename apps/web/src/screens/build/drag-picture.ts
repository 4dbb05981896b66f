// The build as the scene shows it: at rest, or with one piece on its way.

import type { PlacedPiece, Stack } from '@cairnmark/geometry';
import type { Ghost, ScenePicture, Why } from '../../scene/picture.ts';

export interface Dragging {
  /** The pieces that stay, in their places. */
  readonly others: readonly PlacedPiece[];
  /** Where it would settle, or where it is held though it may not be put there; null: not over the scene yet. */
  readonly ghost: Ghost | null;
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
  const { others, ghost } = dragging;
  return { pieces: others, picked: null, ghost, why: null, unit, heightText };
}
