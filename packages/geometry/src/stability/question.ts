// What has to be known of a build to judge it, and the build as a problem of statics. mm, grams, rad.

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { buildStack } from '../stack/build-stack.ts';
import type { LaidPiece, PlacedPiece, SolidsByKind, Stack, StackIssue, Support, Weighed } from '../stack/types.ts';
import type { PairFriction, Surface } from './friction.ts';
import { frictionBetween } from './friction.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import type { Material, OwnMass } from './material.ts';
import { massOf } from './material.ts';
import { staticProblem } from './problem.ts';
import type { StaticProblem } from './types.ts';

/** What the pieces of one kind are made of. */
export interface KindStuff {
  readonly material: Material;
  readonly surface: Surface;
}

export interface StabilityQuestion {
  readonly pieces: readonly LaidPiece[];
  readonly solids: SolidsByKind;
  /** By kind id; every kind that was laid is among them. */
  readonly stuff: ReadonlyMap<string, KindStuff>;
  readonly table: Surface;
  readonly pairs: readonly PairFriction[];
  /** One division of the ruler, mm: moves that mend are whole numbers of it. */
  readonly rulerStepMm: number;
  /** Pieces that come within this of what is below them rest on it too, mm (2 mm for paper). */
  readonly slackMm: number;
  /** null: none is loaded. */
  readonly solver: LinearSolver | null;
  readonly limits: WorkLimits;
}

export interface Posed {
  readonly stack: Stack;
  readonly problem: StaticProblem;
}

/** The question's build, or the same with its pieces laid otherwise, dropped and weighed. Refused as a layout is. */
export function pose(question: StabilityQuestion, pieces: readonly LaidPiece[]): Result<Posed, StackIssue> {
  const built = buildStack(pieces, question.solids, question.slackMm);
  if (!built.ok) return built;
  const stack = built.value;
  const problem = staticProblem(stack, {
    massOf: (piece) => weighedOr(pieces[piece.index]?.weighed, usualMass(question, piece)),
    frictionOf: (support) => frictionAt(question, stack, support),
  });
  return success({ stack, problem });
}

/** The stuff of a kind. Throws RangeError when the caller left it out. */
export function stuffOf(question: StabilityQuestion, kind: string): KindStuff {
  const stuff = question.stuff.get(kind);
  if (stuff === undefined) throw new RangeError(`nothing is said of what ${kind} is made of`);
  return stuff;
}

const usualMass = (question: StabilityQuestion, { kind, solid }: PlacedPiece): OwnMass =>
  massOf(solid, stuffOf(question, kind).material);

function weighedOr(weighed: Weighed | undefined, usual: OwnMass): OwnMass {
  if (weighed === undefined) return usual;
  const [x, y, z] = usual.centre;
  return { massG: weighed.massG, centre: [x, y, weighed.centreMm ?? z] };
}

function frictionAt(question: StabilityQuestion, stack: Stack, { upper, lower }: Support): number {
  const surfaceOf = (index: number): Surface => stuffOf(question, stack.pieces[index]?.kind ?? '').surface;
  const below = lower === 'table' ? question.table : surfaceOf(lower);
  return frictionBetween(surfaceOf(upper), below, question.pairs);
}
