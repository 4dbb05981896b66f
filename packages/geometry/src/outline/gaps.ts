// The fillings of all narrow gaps, and the places that are told to the teacher as counted as closed; mm.

import type { Vec2 } from '../kernel/vec.ts';
import type { GapLimits } from './facing-sides.ts';
import type { Filling } from './fillings.ts';
import { fillingsBetween } from './fillings.ts';
import { groupsOf } from './groups.ts';
import { forNearPairs } from './near.ts';
import type { Piece } from './piece.ts';
import type { EdgesLeft } from './walk.ts';

/** A narrow place between two outlines that was counted as closed. */
export interface ClosedGap {
  readonly at: Vec2;
  /** At its widest. */
  readonly widthMm: number;
}

/** All fillings between pieces near each other; `joins` is told of every two pieces that get one. */
export function fillingsOf(
  pieces: readonly Piece[],
  left: readonly EdgesLeft[],
  near: readonly (readonly number[])[],
  limits: GapLimits,
  joins: (i: number, j: number) => void,
): readonly Filling[] {
  const fillings: Filling[] = [];
  pieces.forEach((a, i) => {
    for (const j of near[i] ?? []) {
      const b = pieces[j];
      if (j <= i || a.kind === 'disc' || b === undefined || b.kind === 'disc') continue;
      const nearPieces = (): readonly Piece[] => (near[i] ?? []).flatMap((k) => pieces[k] ?? []);
      const found = fillingsBetween(
        { piece: a, left: left[i] ?? [] },
        { piece: b, left: left[j] ?? [] },
        nearPieces,
        limits,
      );
      if (found.length > 0) joins(i, j);
      fillings.push(...found);
    }
  });
  return fillings;
}

/** One place for each gap wider than a contact: fillings of the same two outlines that adjoin each other are one gap. */
export function gapsOf(fillings: readonly Filling[], touchingMm: number, nodeMm: number): readonly ClosedGap[] {
  const groups = groupsOf(fillings.length);
  forNearPairs(
    fillings.map(({ piece }) => piece),
    nodeMm,
    (i, j) => {
      if (sameOwners(fillings[i], fillings[j])) groups.join(i, j);
    },
  );
  const widest = new Map<number, ClosedGap>();
  fillings.forEach(({ at, widthMm }, i) => {
    const group = groups.groupOf(i);
    if (widthMm > touchingMm && widthMm > (widest.get(group)?.widthMm ?? 0)) widest.set(group, { at, widthMm });
  });
  return [...widest.values()];
}

function sameOwners(a: Filling | undefined, b: Filling | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  const [p, q] = [a.owners, b.owners];
  return (p[0] === q[0] && p[1] === q[1]) || (p[0] === q[1] && p[1] === q[0]);
}
