// The counted ways round of a union as lines and arcs, for drawing; mm.

import type { Outline } from '../kernel/outline.ts';
import type { BoundaryPart } from './boundary.ts';
import { boundaryParts } from './boundary.ts';
import type { GapPolicy } from './counted-union.ts';
import { countedUnion } from './counted-union.ts';

/** A way round the counted region: counter-clockwise, or clockwise round a hole. */
export interface UnionLoop {
  readonly isHole: boolean;
  readonly parts: readonly BoundaryPart[];
}

/** The ways round that `unionFacts` measures. Throws RangeError on a coordinate that is not finite. */
export function unionLoops(outlines: readonly Outline[], policy: GapPolicy): readonly UnionLoop[] {
  const { union, outer, holes } = countedUnion(outlines, policy);
  const { origin } = union.frame;
  return [...outer, ...holes].map((loop, i) => ({
    isHole: i >= outer.length,
    parts: loop.strands.flatMap((strand) => boundaryParts(strand, origin)),
  }));
}
