// Does a build stand, by how much, what goes first, and what would mend it.

export { frictionCone } from './cone.ts';
export { contactColumns, weights } from './equilibrium.ts';
export type { Failure } from './failures.ts';
export type { JointMargin, Tilt } from './figures.ts';
export type { PairFriction, Surface } from './friction.ts';
export type { HighsRuntime } from './highs-solver.ts';
export { highsSolver } from './highs-solver.ts';
export type { Hinge } from './hinge.ts';
export { centreOf } from './hinge.ts';
export type { Judgement } from './judge.ts';
export { judge, judgeByProgrammes } from './judge.ts';
export type { LinearAnswer, LinearModel, LinearSession, LinearSolver } from './linear-solver.ts';
export type { WorkLimits } from './margin.ts';
export type { Material, OwnMass, TabPaper, TabsOf } from './material.ts';
export { massOf, noTabs } from './material.ts';
export type { Mend, Side } from './mend.ts';
export { moveBy } from './mend.ts';
export type { NotPredicted } from './not-predicted.ts';
export type { WithoutPiece } from './on-request.ts';
export { tiltTowards, withoutPiece } from './on-request.ts';
export type { KindStuff, Posed, StabilityQuestion } from './question.ts';
export { pose } from './question.ts';
export type { Stability } from './stability.ts';
export { SMALL_BUILD, stabilityOf } from './stability.ts';
export type { Patch, StaticProblem } from './types.ts';
export type { Verdict } from './verdict.ts';
export { CLOSE_RAD, STEADY_RAD, TILT_BANDS } from './verdict.ts';
