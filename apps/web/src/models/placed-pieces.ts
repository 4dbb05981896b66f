// The build of a try as pieces in their places, as Build shows it, each with the name of its kind.

import { buildStack } from '@cairnmark/geometry';
import { solidsOf } from '../drawing/solids-of.ts';
import type { At } from '../store/where-at.ts';
import type { ModelPiece } from './model.ts';

/** A piece whose colour is not yet known. */
export type NamedPiece = Omit<ModelPiece, 'colour'>;

/** In building order; null where nothing is laid out, or the layout is refused. */
export function placedPieces({ challenge, group, attempt }: At): readonly NamedPiece[] | null {
  if (attempt?.layout.kind !== 'laid-out') return null;
  const built = buildStack(attempt.layout.pieces, solidsOf(challenge, group), challenge.slackMm);
  if (!built.ok) return null;
  const names = new Map(challenge.kit.kinds.map(({ id, name }) => [id, name]));
  return built.value.pieces.map(({ kind, solid, rotation, shift }) => {
    return { name: names.get(kind) ?? kind, solid, rotation, shift };
  });
}
