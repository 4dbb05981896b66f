// The kinds of a kit that are folded from paper, as nets to order.

import type { KindOfPiece } from '@cairnmark/engine';
import { makeSolid } from '@cairnmark/geometry';
import type { NetKind, NetOrder } from '@cairnmark/print';
import { usualTabDepthMm } from '@cairnmark/print';
import type { Job } from './job.ts';

export const isPaper = ({ material }: KindOfPiece): boolean => material.kind === 'folded-paper';

/** So many of each kind. Young hands get deeper tabs. */
export function orderOf({ challenge, paper, options, record }: Job, sets: number): NetOrder {
  return {
    kinds: challenge.kit.kinds.filter(isPaper).map((kind) => netKind(kind, sets)),
    paper,
    arrange: options.masters ? 'masters' : 'mixed',
    tabDepthMm: usualTabDepthMm(challenge.gradePreset),
    large: options.split ? 'split' : 'tell',
    invented: record.invented,
  };
}

function netKind({ id, name, solid, material }: KindOfPiece, count: number): NetKind {
  const made = makeSolid(solid);
  if (!made.ok) throw new RangeError(`${id} is no solid, though its file was read`);
  return { id, name, solid: made.value, count, base: material.kind === 'folded-paper' ? material.base : 'closed' };
}
