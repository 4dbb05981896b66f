// One pipeline for web, server and terminal: evaluate an attempt, rank the reports, score a class.

export { challengeIssues } from './check/challenge.ts';
export { classIssues } from './check/class-record.ts';
export type { EngineIssue, EngineIssueCode } from './check/issues.ts';
export { kitIssues } from './check/kit.ts';
export type { ClassScore } from './class/score-class.ts';
export { scoreClass } from './class/score-class.ts';
export { evaluate } from './evaluate/evaluate.ts';
export * from './limits.ts';
export { stabilityQuestion, TABLE } from './stability/question.ts';
export type { Statics } from './stability/statics.ts';
export { needsSolver, someNeedSolver, USUAL_LIMITS } from './stability/statics.ts';
export { countingReports } from './standings/counting.ts';
export { standings } from './standings/standings.ts';
export * from './types.ts';
export { ENGINE_VERSION } from './version.ts';
