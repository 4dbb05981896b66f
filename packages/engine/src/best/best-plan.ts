// From a challenge's kit, supply and rules to the task of the search for the best build.

import type { OwnMass, Solid, TabsOf } from '@cairnmark/geometry';
import { frictionBetween, makeSolid, massOf, schoolCounts } from '@cairnmark/geometry';
import type { BestGoal, BestKind, BestTask, Grips } from '@cairnmark/scoring';
import { kindsOf } from '../evaluate/kinds.ts';
import { kindFactId } from '../facts/ids.ts';
import { wholePieces } from '../facts/pieces.ts';
import { surfaceOf, TABLE_SURFACE } from '../stability/question.ts';
import type { Challenge, Group, KindOfPiece } from '../types.ts';
import type { Asked } from './goal.ts';
import { askedBy, soughtIn } from './goal.ts';
import { lyingOf, waysUp } from './ways-up.ts';

/** Whose build it would be. `group` null: any group's, in the sizes of the kit, with all pieces of the class. */
export interface BestFor {
  readonly group: Group | null;
  /** Pieces that the group has earned, by kind id; null: no supply game, or the whole stock is meant. */
  readonly earned: Readonly<Record<string, number>> | null;
}

export interface BestPlan {
  readonly task: BestTask;
  /** Ids of rules and of rows of the points table that the search does not look at. */
  readonly leftOut: { readonly requirements: readonly string[]; readonly rows: readonly string[] };
  /** Ids of rules that cost or earn points and are kept here, without what they are worth. */
  readonly takenAsMust: readonly string[];
}

/**
 * null: the challenge ranks by something of which no best is worked out. Kinds and sizes must have been checked: throws
 * RangeError for one that makes no solid.
 */
export function bestPlan(challenge: Challenge, { group, earned }: BestFor, tabsOf: TabsOf): BestPlan | null {
  const asked = askedBy(challenge);
  const pieces = shapesOf(challenge, group, tabsOf);
  const sought = soughtIn(
    challenge,
    new Set(['height', 'base-area', ...pieces.flatMap((piece) => Object.keys(measuresOf(piece, challenge)))]),
  );
  if (sought === null) return null;
  const limits = { asked, earned: asked.onlyEarned || group !== null ? earned : null };
  const kinds = pieces.map((piece) => bestKind(piece, pieces, challenge, limits));
  return {
    task: {
      kinds,
      pieces: asked.pieces,
      beside: groundAddsUp(challenge, asked, sought.goal),
      baseAtMostMm2: asked.baseAtMostMm2,
      pushAtLeast: asked.tiltAtLeastRad >= Math.PI / 2 ? Number.POSITIVE_INFINITY : Math.tan(asked.tiltAtLeastRad),
      grips: gripsOf(challenge),
      goal: sought.goal,
    },
    leftOut: { requirements: asked.leftOut, rows: sought.rowsLeftOut },
    takenAsMust: asked.taken,
  };
}

/** Pieces that a search may try: some seconds, far beyond what kits of a classroom take. */
export const USUAL_BEST_LIMIT = 5_000_000;

/** A kind of piece with its solid and its mass, as the group measured it. */
export interface Shape {
  readonly kind: KindOfPiece;
  readonly solid: Solid;
  readonly mass: OwnMass;
}

export function shapesOf(challenge: Challenge, group: Group | null, tabsOf: TabsOf): readonly Shape[] {
  const specs = kindsOf(challenge, group ?? NOBODY);
  return challenge.kit.kinds.map((kind) => {
    const spec = specs.get(kind.id);
    const made = spec === undefined ? undefined : makeSolid(spec);
    if (made?.ok !== true) throw new RangeError(`unchecked sizes of ${kind.id}`);
    return { kind, solid: made.value, mass: massOf(made.value, kind.material, tabsOf) };
  });
}

const NOBODY: Group = { id: '', name: '', measured: {} };

interface Limits {
  readonly asked: Asked;
  readonly earned: BestFor['earned'];
}

function bestKind(shape: Shape, all: readonly Shape[], challenge: Challenge, { asked, earned }: Limits): BestKind {
  const { kind, solid, mass } = shape;
  const range = asked.kinds.get(kind.id);
  const had = earned === null ? Number.POSITIVE_INFINITY : Object.hasOwn(earned, kind.id) ? (earned[kind.id] ?? 0) : 0;
  const surface = surfaceOf(kind);
  const grip = Math.max(
    ...all.map((other) => frictionBetween(surface, surfaceOf(other.kind), challenge.kit.frictions)),
  );
  return {
    id: kind.id,
    stock: Math.max(0, Math.min(wholePieces(kind), had, range?.most ?? Number.POSITIVE_INFINITY)),
    least: range?.least ?? 0,
    massG: mass.massG,
    ways: waysUp(solid, mass, challenge.base),
    ...lyingOf(solid, grip),
    measures: measuresOf(shape, challenge),
  };
}

/** What one piece adds to the measures that sum over pieces. */
function measuresOf({ kind, solid }: Shape, { counting }: Challenge): Readonly<Record<string, number>> {
  const { flatFaces, curvedSurfaces, straightEdges, curvedEdges, vertices } = solid.counts;
  return {
    pieces: 1,
    [kindFactId(kind.id)]: 1,
    volume: solid.volumeMm3,
    paper: solid.surfaceMm2,
    'flat-faces': flatFaces,
    'curved-surfaces': curvedSurfaces,
    'straight-edges': straightEdges,
    'curved-edges': curvedEdges,
    vertices,
    ...schoolCounts(solid.counts, counting),
  };
}

/** Two builds side by side stand on the sum of their grounds, unless the ground is the hull of all contacts. */
function groundAddsUp({ base, points }: Challenge, { baseAtMostMm2 }: Asked, { kind }: BestGoal): boolean {
  const isAsked =
    baseAtMostMm2 !== null ||
    kind === 'tallest-on-smallest-base' ||
    points.some(({ measure }) => measure === 'base-area');
  return base !== 'hull-of-contacts' || !isAsked;
}

function gripsOf({ kit }: Challenge): Grips {
  const surfaces = kit.kinds.map(surfaceOf);
  return {
    between: surfaces.map((upper) => surfaces.map((lower) => frictionBetween(upper, lower, kit.frictions))),
    onTable: surfaces.map((surface) => frictionBetween(surface, TABLE_SURFACE, kit.frictions)),
  };
}
