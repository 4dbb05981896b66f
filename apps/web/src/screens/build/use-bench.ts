// What the group at work may build with: solids in its own sizes, and how many pieces of each kind.

import type { Bench } from '@cairnmark/editing';
import type { Challenge, Group } from '@cairnmark/engine';
import { kindsOf, wholePieces } from '@cairnmark/engine';
import type { SolidsByKind } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';

export function useBench(challenge: Challenge, group: Group): Bench {
  return useMemo(() => benchOf(challenge, group), [challenge, group]);
}

/** Kinds whose sizes do not fit together have no solid: the class check tells of them. */
export function benchOf(challenge: Challenge, group: Group): Bench {
  return {
    solids: solidsOf(challenge, group),
    stock: new Map(challenge.kit.kinds.map((kind) => [kind.id, wholePieces(kind)])),
    slackMm: challenge.slackMm,
  };
}

function solidsOf(challenge: Challenge, group: Group): SolidsByKind {
  return new Map(
    [...kindsOf(challenge, group)].flatMap(([id, spec]) => {
      const made = makeSolid(spec);
      return made.ok ? [[id, made.value] as const] : [];
    }),
  );
}
