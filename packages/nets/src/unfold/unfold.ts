// Lays the faces of a solid out flat: a face lies where its tree hangs it, each child along the side that it has in common
// with its parent. Only the edges in space are used, so any convex solid with flat faces can be unfolded. mm.

import type { Vec2 } from '@cairnmark/geometry';
import type { Motion } from '../plane/motion.ts';
import { afterMotion, lay, moved, STAY } from '../plane/motion.ts';
import type { FaceTable } from './faces.ts';
import { commonSide } from './faces.ts';

/** A fold between a face that lies already and the face that hangs on it. */
export type Joint = readonly [parent: number, child: number];

/** The folds of one connected piece, each parent laid before its children; the first parent is laid first of all. */
export interface Tree {
  readonly joints: readonly Joint[];
  /** The fold that is drawn level; without one the first face stands as it stands in the solid. */
  readonly level?: Joint;
  /** Faces that are glued last: no tabs of their own, where that is as good. */
  readonly lids?: readonly number[];
}

export interface LaidFace {
  readonly face: number;
  readonly ring: readonly Vec2[];
  /** From the face's own figure onto the sheet. */
  readonly motion: Motion;
}

/** One connected piece of paper, before its tabs. */
export interface Sheet {
  readonly faces: readonly LaidFace[];
  readonly joints: readonly Joint[];
  readonly lids: readonly number[];
}

/** The faces of one tree, `root` alone when it has no joint. RangeError when a joint hangs a face on no neighbour. */
export function unfold(table: FaceTable, root: number, { joints, level, lids = [] }: Tree): Sheet {
  const laid = new Map<number, LaidFace>([[root, laidFace(table, root, STAY)]]);
  for (const [parent, child] of joints) {
    const under = laid.get(parent);
    const [side, own] = [commonSide(table, parent, child), commonSide(table, child, parent)];
    if (under === undefined || side === undefined || own === undefined || laid.has(child)) {
      throw new RangeError(`face ${child} cannot hang on face ${parent}`);
    }
    const [a, b] = sideOf(under.ring, side);
    const [from, to] = sideOf(table.faces[child]?.ring ?? [], own);
    laid.set(child, laidFace(table, child, lay(from, to, b, a)));
  }
  const sheet = { faces: [...laid.values()], joints, lids };
  return level === undefined ? sheet : turned(table, sheet, level);
}

/** Side `k` of a ring: from its corner k to the next one. */
export function sideOf(ring: readonly Vec2[], k: number): readonly [Vec2, Vec2] {
  const [from, to] = [ring[k], ring[(k + 1) % ring.length]];
  if (from === undefined || to === undefined) throw new RangeError(`no side ${k} in a ring of ${ring.length}`);
  return [from, to];
}

const laidFace = (table: FaceTable, face: number, motion: Motion): LaidFace => ({
  face,
  ring: (table.faces[face]?.ring ?? []).map((corner) => moved(motion, corner)),
  motion,
});

/** Laid out anew, with the fold between parent and child level and the parent below it. */
function turned(table: FaceTable, sheet: Sheet, [parent, child]: Joint): Sheet {
  const under = sheet.faces.find(({ face }) => face === parent);
  const side = commonSide(table, parent, child);
  if (under === undefined || side === undefined) throw new RangeError(`no fold between ${parent} and ${child}`);
  const [a, b] = sideOf(under.ring, side);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const turn: Motion = { cos: (a[0] - b[0]) / length, sin: (b[1] - a[1]) / length, shift: [0, 0] };
  return { ...sheet, faces: sheet.faces.map(({ face, motion }) => laidFace(table, face, afterMotion(turn, motion))) };
}
