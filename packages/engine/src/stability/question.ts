// The build of an attempt as a question of statics: what its pieces are made of and how they grip, as the kit says.

import type { KindStuff, LaidPiece, Solid, StabilityQuestion, Surface } from '@cairnmark/geometry';
import { makeSolid, rulerOf } from '@cairnmark/geometry';
import { kindsOf } from '../evaluate/kinds.ts';
import type { Attempt, Challenge, Group, KindOfPiece } from '../types.ts';
import type { Statics } from './statics.ts';

/** Name of the surface of the table among the frictions of a kit. */
export const TABLE = 'table';

/**
 * null when there is nothing to judge: no pieces, or no drawing of where they lie. Kinds, sizes and names must have been
 * checked: throws RangeError for one that is not in the kit.
 */
export function stabilityQuestion(
  { layout }: Attempt,
  challenge: Challenge,
  group: Group,
  { solver, limits, tabsOf }: Statics,
): StabilityQuestion | null {
  if (layout.kind !== 'laid-out' || layout.pieces.length === 0) return null;
  return {
    pieces: layout.pieces,
    solids: solidsOf(layout.pieces, challenge, group),
    stuff: new Map(challenge.kit.kinds.map((kind) => [kind.id, stuffOf(kind)])),
    table: TABLE_SURFACE,
    pairs: challenge.kit.frictions,
    tabsOf,
    rulerStepMm: rulerOf(challenge.ruler).stepMm,
    slackMm: challenge.slackMm,
    solver,
    limits,
  };
}

/** A kind's friction is the one it has on the table too, unless the pair is stated: the smaller of the two counts. */
export const TABLE_SURFACE: Surface = { material: TABLE, friction: Number.POSITIVE_INFINITY };

const stuffOf = ({ material, surface, friction }: KindOfPiece): KindStuff => ({
  material,
  surface: surfaceOf({ surface, friction }),
});

export const surfaceOf = ({ surface, friction }: Pick<KindOfPiece, 'surface' | 'friction'>): Surface => ({
  material: surface,
  friction,
});

function solidsOf(pieces: readonly LaidPiece[], challenge: Challenge, group: Group): ReadonlyMap<string, Solid> {
  const used = new Set(pieces.map(({ kind }) => kind));
  return new Map(
    [...kindsOf(challenge, group)]
      .filter(([id]) => used.has(id))
      .map(([id, spec]) => {
        const made = makeSolid(spec);
        if (!made.ok) throw new RangeError(`unchecked sizes of ${id}`);
        return [id, made.value];
      }),
  );
}
