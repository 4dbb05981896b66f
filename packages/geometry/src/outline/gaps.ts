// The places that are told to the teacher as counted as closed, in the frame of the table; mm.

import type { Vec2 } from '../kernel/vec.ts';
import { add2 } from '../kernel/vec.ts';
import type { CountedUnion } from './counted-union.ts';
import { xAt, yAt } from './edge.ts';
import type { Filling } from './fillings.ts';
import { groupsOf } from './groups.ts';
import type { NarrowPlace } from './links.ts';
import type { Loop } from './loops.ts';
import { widthOf } from './loops.ts';
import { forNearPairs } from './near.ts';

/** A narrow place that was counted as closed. */
export interface ClosedGap {
  readonly at: Vec2;
  /** At its widest. */
  readonly widthMm: number;
}

/** Every gap wider than a contact that was counted as closed: filled, linked, or a hole too narrow to count. */
export function gapsOf({ union, fillings, links, closed, touchingMm }: CountedUnion): readonly ClosedGap[] {
  const { origin, nodeMm } = union.frame;
  const gaps = [
    ...filledGaps(fillings, nodeMm),
    ...links.map(gapAtLink),
    ...closed.filter((loop) => loop.strands.every((strand) => strand.acrossMm === 0)).map(gapAtHole),
  ];
  return gaps
    .filter(({ widthMm }) => widthMm > touchingMm)
    .map(({ at, widthMm }) => ({ at: add2(at, origin), widthMm }));
}

/** One place for each gap: fillings of the same two outlines that adjoin each other are one. */
function filledGaps(fillings: readonly Filling[], nodeMm: number): readonly ClosedGap[] {
  const groups = groupsOf(fillings.length);
  forNearPairs(
    fillings.map(({ piece }) => piece),
    nodeMm,
    (i, j) => {
      if (haveSameOwners(fillings[i], fillings[j])) groups.join(i, j);
    },
  );
  const widest = new Map<number, ClosedGap>();
  fillings.forEach(({ at, widthMm }, i) => {
    const group = groups.groupOf(i);
    if (widthMm > (widest.get(group)?.widthMm ?? 0)) widest.set(group, { at, widthMm });
  });
  return [...widest.values()];
}

function haveSameOwners(a: Filling | undefined, b: Filling | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  const [p, q] = [a.owners, b.owners];
  return (p[0] === q[0] && p[1] === q[1]) || (p[0] === q[1] && p[1] === q[0]);
}

const gapAtLink = ({ onA, onB, gapMm }: NarrowPlace): ClosedGap => ({
  at: [(onA.x + onB.x) / 2, (onA.y + onB.y) / 2],
  widthMm: gapMm,
});

/** At the mean of the places where its strands begin. */
function gapAtHole(loop: Loop): ClosedGap {
  const count = loop.strands.length;
  const x = loop.strands.reduce((total, { first, from }) => total + xAt(first, from), 0);
  const y = loop.strands.reduce((total, { first, from }) => total + yAt(first, from), 0);
  return { at: [x / count, y / count], widthMm: widthOf(loop) };
}
