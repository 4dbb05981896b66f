// Area, perimeter, parts and holes of a union of outlines, on true arcs and straight sides, and the narrow gaps that were
// counted as closed for perimeter, parts and holes (see GapPolicy); mm.
// Method: what of each boundary lies inside no other outline bounds the union; its area by Green's theorem.

import type { Outline } from '../kernel/outline.ts';
import type { WalkedUnion } from './counted.ts';
import type { GapPolicy } from './counted-union.ts';
import { countedUnion } from './counted-union.ts';
import { areaUnder } from './edge.ts';
import type { ClosedGap } from './gaps.ts';
import { gapsOf } from './gaps.ts';
import type { Loop } from './loops.ts';

export interface UnionFacts {
  /** Exact area of the union: contact and gap allowance never change it. */
  readonly areaMm2: number;
  readonly outerPerimeterMm: number;
  readonly innerPerimeterMm: number;
  /** Groups of outlines that touch, at a point too, or come within the gap allowance. */
  readonly parts: number;
  readonly holes: number;
  /** Area of the holes, as closed by mouths and links; an island in one is not taken off. */
  readonly courtyardMm2: number;
  readonly gaps: readonly ClosedGap[];
}

/**
 * The facts of the union of `outlines`, any way round, convex or not, self-crossing rings by the non-zero rule. Outlines
 * without area add nothing. Throws RangeError on a coordinate that is not finite.
 */
export function unionFacts(outlines: readonly Outline[], policy: GapPolicy): UnionFacts {
  const counted = countedUnion(outlines, policy);
  const { union, outer, holes, specks } = counted;
  return {
    areaMm2: areaOf(union),
    outerPerimeterMm: sumOf([...outer, ...specks], (loop) => loop.lengthMm),
    innerPerimeterMm: sumOf(holes, (loop) => loop.lengthMm),
    parts: union.contacts.countParts(),
    holes: holes.length,
    courtyardMm2: sumOf(holes, (loop) => -loop.signedAreaMm2),
    gaps: gapsOf(counted),
  };
}

/** Green's theorem over what is left of all boundaries. */
function areaOf({ pieces, left }: WalkedUnion): number {
  let areaMm2 = 0;
  pieces.forEach((piece, i) => {
    for (const edge of piece.edges) {
      for (const { from, to } of left[i]?.[edge.index] ?? []) areaMm2 += areaUnder(edge, from, to);
    }
  });
  return areaMm2;
}

const sumOf = (loops: readonly Loop[], value: (loop: Loop) => number): number =>
  loops.reduce((total, loop) => total + value(loop), 0);
