// The kinds of piece of a kit, in the sizes that a group read off its own.

import type { PieceKinds } from '@cairnmark/geometry';
import type { Challenge, Group } from '../types.ts';

/** A group's own sizes of a kind take the place of the kit's, all of them. */
export function kindsOf({ kit }: Challenge, group: Group): PieceKinds {
  return new Map(
    kit.kinds.map(({ id, solid }) => [id, { solid: solid.solid, sizes: ownSizes(group, id) ?? solid.sizes }]),
  );
}

const ownSizes = ({ measured }: Group, kind: string) => (Object.hasOwn(measured, kind) ? measured[kind] : undefined);
