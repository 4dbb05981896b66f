// The solids of a challenge as a group has them, in its own measured sizes.

import type { Challenge, Group } from '@cairnmark/engine';
import { kindsOf } from '@cairnmark/engine';
import type { SolidsByKind } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';

/** Kinds whose sizes do not fit together have no solid: the class check tells of them. */
export const solidsOf = (challenge: Challenge, group: Group): SolidsByKind =>
  new Map(
    [...kindsOf(challenge, group)].flatMap(([id, spec]) => {
      const made = makeSolid(spec);
      return made.ok ? [[id, made.value] as const] : [];
    }),
  );
