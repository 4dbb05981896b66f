// One pipeline for web, server and terminal: evaluate an attempt, rank the reports, score a class.

export { challengeIssues } from './check/challenge.ts';
export { classIssues } from './check/class-record.ts';
export type { EngineIssue, EngineIssueCode } from './check/issues.ts';
export { kitIssues } from './check/kit.ts';
export type { ClassScore } from './class/score-class.ts';
export { scoreClass } from './class/score-class.ts';
export type { Belonging } from './evaluate/evaluate.ts';
export { evaluate } from './evaluate/evaluate.ts';
export { POINTS_ID, SETS_ID, STOOD_ID, TILT_ID } from './facts/ids.ts';
export * from './limits.ts';
export { ownLines } from './own/own-lines.ts';
export { piOf } from './own/pi.ts';
export type { Preset } from './ready/presets.ts';
export { presetOf } from './ready/presets.ts';
export type { ReadyId } from './ready/ready.ts';
export { READY_IDS, readyChallenge } from './ready/ready.ts';
export { stabilityQuestion, TABLE } from './stability/question.ts';
export type { Statics } from './stability/statics.ts';
export { needsSolver, someNeedSolver, USUAL_LIMITS } from './stability/statics.ts';
export { countingReports } from './standings/counting.ts';
export { standings } from './standings/standings.ts';
export * from './types.ts';
export { ENGINE_VERSION } from './version.ts';
export type { Change } from './why/changes.ts';
export { changesSince } from './why/changes.ts';
export type { Ahead, WhyLine } from './why/compare.ts';
export { compareReports } from './why/compare.ts';
