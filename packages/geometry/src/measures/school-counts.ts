// How a school counts the faces, edges and corners of a solid: see CONVENTIONS.md.

import type { Counts } from '../solids/types.ts';
import type { CountingConvention } from './types.ts';

export interface SchoolCounts {
  readonly faces: number;
  readonly edges: number;
  readonly corners: number;
}

export function schoolCounts(counts: Counts, convention: CountingConvention): SchoolCounts {
  const all = convention === 'all-surfaces';
  return {
    faces: all ? counts.flatFaces + counts.curvedSurfaces : counts.flatFaces,
    edges: all ? counts.straightEdges + counts.curvedEdges : counts.straightEdges,
    corners: convention === 'flat-only' ? counts.vertices : counts.vertices + counts.apexes,
  };
}
