// What has to be known of a build to judge it, and the build as a problem of statics. mm, grams, rad.

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { Solid } from '../solids/types.ts';
import { bodyBox } from '../stack/body-box.ts';
import { buildStack } from '../stack/build-stack.ts';
import type { LaidPiece, PlacedPiece, SolidsByKind, Stack, StackIssue, Support, Weighed } from '../stack/types.ts';
import type { PairFriction, Surface } from './friction.ts';
import { frictionBetween } from './friction.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import type { Material, OwnMass, TabsOf } from './material.ts';
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
  /** Of kinds cut from printed nets: their tabs weigh too. */
  readonly tabsOf: TabsOf;
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
  return built.ok ? success(posedAs(question, pieces, built.value)) : built;
}

/** The same of pieces that are where they are: weighed, not dropped. */
export function posedAs(question: StabilityQuestion, pieces: readonly LaidPiece[], stack: Stack): Posed {
  const problem = staticProblem(stack, {
    massOf: (piece) => massAt(question, piece, pieces[piece.index]?.weighed),
    frictionOf: (support) => frictionAt(question, stack, support),
  });
  return { stack, problem };
}

/** The stuff of a kind. Throws RangeError when the caller left it out. */
export function stuffOf(question: StabilityQuestion, kind: string): KindStuff {
  const stuff = question.stuff.get(kind);
  if (stuff === undefined) throw new RangeError(`nothing is said of what ${kind} is made of`);
  return stuff;
}

function massAt(question: StabilityQuestion, { kind, solid }: PlacedPiece, weighed: Weighed | undefined): OwnMass {
  const usual = massOf(solid, stuffOf(question, kind).material, question.tabsOf);
  if (weighed === undefined) return usual;
  const { massG, centreMm } = weighed;
  const [x, y, z] = usual.centre;
  return { massG, centre: [x, y, centreMm === undefined ? z : insideOf(solid, centreMm)] };
}

/** A centre typed on the very skin of a piece lies a contact's width inside: no piece has all its mass in one face. */
function insideOf({ body }: Solid, centreMm: number): number {
  const { min, max } = bodyBox(body);
  const skinMm = Math.min(CONTACT_MM, (max[2] - min[2]) / 2);
  return Math.min(max[2] - skinMm, Math.max(min[2] + skinMm, centreMm));
}

function frictionAt(question: StabilityQuestion, stack: Stack, { upper, lower }: Support): number {
  const surfaceOf = (index: number): Surface => stuffOf(question, stack.pieces[index]?.kind ?? '').surface;
  const below = lower === 'table' ? question.table : surfaceOf(lower);
  return frictionBetween(surfaceOf(upper), below, question.pairs);
}
