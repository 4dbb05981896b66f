// The pieces of the true towers as the catalogue has them.

import type { Resting, Solid, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import type { TruePiece } from './truth.ts';

export function listed({ kind, dims }: TruePiece): { readonly solid: Solid; readonly resting: Resting } {
  const made = makeSolid(specOf(kind, dims));
  if (!made.ok) throw new Error(`no ${kind} of ${JSON.stringify(dims)}`);
  return { solid: made.value, resting: made.value.restings[0]! };
}

function specOf(kind: string, dims: TruePiece['dims']): SolidSpec {
  switch (kind) {
    case 'rectangular prism':
      return { solid: 'rectangular-prism', sizes: dims };
    case 'hexagonal prism':
      return { solid: 'regular-prism', sizes: { sides: 6, edge: dims['side']!, height: dims['height']! } };
    case 'square pyramid':
      return { solid: 'regular-pyramid', sizes: { sides: 4, ...dims } };
    case 'cylinder':
    case 'cone':
    case 'sphere':
      return { solid: kind, sizes: dims };
    default:
      throw new RangeError(`no solid is called ${kind}`);
  }
}
