// The two columns of values: at the right what the ranking asks for first, beside it what helps to read it.

import type { Challenge, Report } from '@cairnmark/engine';
import { POINTS_ID } from '@cairnmark/engine';
import type { RankingKey } from '@cairnmark/scoring';
import type { BoardLine } from './lines.ts';

/** What stands beside: the first tie-break, the points, or the measure that the points come from first. */
export type Beside =
  | { readonly kind: 'tie-break'; readonly key: RankingKey }
  | { readonly kind: 'points' }
  | { readonly kind: 'fact'; readonly measure: string };

export function besideOf({ ranking, points }: Challenge): Beside | null {
  const [tieBreak] = ranking.tieBreaks;
  if (tieBreak !== undefined) return { kind: 'tie-break', key: tieBreak };
  const [row] = points;
  if (row === undefined) return null;
  return ranking.first.by === POINTS_ID ? { kind: 'fact', measure: row.measure } : { kind: 'points' };
}

/** A column of points as numbers; null for other columns. */
export function pointsIn(lines: readonly BoardLine[], column: RankingKey | Beside | null): readonly number[] | null {
  if (column === null) return null;
  if ('kind' in column && column.kind === 'fact') return null;
  if ('kind' in column && column.kind === 'points') return lines.flatMap(({ report }) => report?.total ?? []);
  const key = 'kind' in column ? column.key : column;
  return key.by === POINTS_ID ? lines.flatMap((line) => keyValue(line, key) ?? []) : null;
}

/** The value of a ranking key, rounded as the ranking rounds. */
export const keyValue = ({ standing }: BoardLine, key: RankingKey): number | null =>
  standing.decidedBy.find(({ by }) => by === key.by)?.value ?? null;

/** The error of a fact of the build, in its unit; 0 for what is not there. */
export const toleranceOf = (report: Report | null, fact: string): number =>
  report?.facts.find(({ id }) => id === fact)?.tolerance ?? 0;
