// What has to be known of a build to judge it, and the build as a problem of statics. mm, grams, rad.

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { buildStack } from '../stack/build-stack.ts';
import type { LaidPiece, PlacedPiece, SolidsByKind, Stack, StackIssue, Support } from '../stack/types.ts';
import { closeGaps } from './close-gaps.ts';
import type { PairFriction, Surface } from './friction.ts';
import { frictionBetween } from './friction.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import type { Material, OwnMass } from './material.ts';
import { massOf } from './material.ts';
import { staticProblem } from './problem.ts';
import type { StaticProblem } from './types.ts';
import type { StatedReason } from './verdict.ts';

/** What the pieces of one kind are made of. */
export interface KindStuff {
  readonly material: Material;
  readonly surface: Surface;
  /** Mass of each of them where it differs from what the material gives: all of them weighted alike. */
  readonly ownMass?: OwnMass;
}

export interface StabilityQuestion {
  readonly pieces: readonly LaidPiece[];
  readonly solids: SolidsByKind;
  /** By kind id; every kind that was laid is among them. */
  readonly stuff: ReadonlyMap<string, KindStuff>;
  /** Mass of single pieces, by index, where it differs from their kind: repaired or weighted ones. */
  readonly ownMasses: ReadonlyMap<number, OwnMass>;
  readonly table: Surface;
  readonly pairs: readonly PairFriction[];
  /** Pieces for which no prediction is wanted or possible, as people see them on the real build. */
  readonly stated: readonly StatedReason[];
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
  const built = buildStack(pieces, question.solids);
  if (!built.ok) return built;
  const stack = closeGaps(built.value, question.slackMm);
  const problem = staticProblem(stack, {
    massOf: (piece) => ownMassOf(question, piece),
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

function ownMassOf(question: StabilityQuestion, { index, kind, solid }: PlacedPiece): OwnMass {
  const { material, ownMass } = stuffOf(question, kind);
  return question.ownMasses.get(index) ?? ownMass ?? massOf(solid, material);
}

function frictionAt(question: StabilityQuestion, stack: Stack, { upper, lower }: Support): number {
  const surfaceOf = (index: number): Surface => stuffOf(question, stack.pieces[index]?.kind ?? '').surface;
  const below = lower === 'table' ? question.table : surfaceOf(lower);
  return frictionBetween(surfaceOf(upper), below, question.pairs);
}
