// From facts to points to places. Rules in RULES.md; errors of a programmer throw, all else is data.

export { day } from './day/day.ts';
export type { Totals } from './day/results.ts';
export type { PointsTable } from './points/lines.ts';
export { pointsLines } from './points/lines.ts';
export { pointsTolerance } from './points/tolerance.ts';
export { leaders, rank } from './ranking/rank.ts';
export { costOfBroken, requirementLines } from './requirements/lines.ts';
export { FIXED_TO } from './rounding/fixed.ts';
export { roundTo } from './rounding/round.ts';
export { exactSum } from './rounding/sum.ts';
export * from './types.ts';
