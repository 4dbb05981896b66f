// From facts to points to places. Rules in RULES.md; errors of a programmer throw, all else is data.

export { day } from './day/day.ts';
export type { Totals } from './day/results.ts';
export type { DayChallenge, GivenMark } from './day/warnings.ts';
export { dayWarnings } from './day/warnings.ts';
export type { PointsErrors } from './points/errors.ts';
export { pointsErrors } from './points/errors.ts';
export type { PointsTable } from './points/lines.ts';
export { pointsLines } from './points/lines.ts';
export { areNear } from './ranking/near.ts';
export { leaders, rank } from './ranking/rank.ts';
export type { ErrorReach } from './ranking/swing.ts';
export { errorReach } from './ranking/swing.ts';
export { pointsOfRequirements, requirementLines, requirementPoints } from './requirements/lines.ts';
export { FIXED_TO } from './rounding/fixed.ts';
export { roundTo } from './rounding/round.ts';
export { exactSum, sumIfKnown } from './rounding/sum.ts';
export type { PieceCounts, SupplyFactId } from './supply/facts.ts';
export { SUPPLY_FACT_IDS, supplyFactValues } from './supply/facts.ts';
export { supplyIssues } from './supply/issues.ts';
export { isOver } from './supply/over.ts';
export { stockLeft } from './supply/stock.ts';
export { piecesOf } from './supply/strokes.ts';
export { supplies } from './supply/supplies.ts';
export * from './supply/types.ts';
export * from './types.ts';
