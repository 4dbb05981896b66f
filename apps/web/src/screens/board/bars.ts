// The bar of a build on the ruler, in the unit that is shown: one piece for a measure; for points one piece a part, set end
// to end, and what is taken off reaches back from their end to the total.

import type { Challenge, Report } from '@cairnmark/engine';
import { entryOf, POINTS_ID } from '@cairnmark/engine';
import type { ErrorReach } from '@cairnmark/scoring';
import { errorReach } from '@cairnmark/scoring';
import type { BoardLine } from './lines.ts';
import { firstValue } from './lines.ts';
import type { Part, PartId } from './parts.ts';
import { partsOf } from './parts.ts';

export interface Segment {
  readonly part: PartId | 'measure';
  readonly from: number;
  readonly to: number;
}

export interface Bar {
  readonly segments: readonly Segment[];
  /** From the total up to what was earned before; null where nothing is taken off. */
  readonly takenOff: { readonly from: number; readonly to: number; readonly parts: readonly PartId[] } | null;
  readonly value: number;
  /** Expanded; 0 where there is none. Points that go in steps may reach further to one side. */
  readonly error: ErrorReach;
}

/** null: nothing to draw. `unitSize`: one shown unit in the engine's. */
export function barOf(line: BoardLine, challenge: Challenge, unitSize: number): Bar | null {
  const value = firstValue(line);
  if (value === null || line.report === null) return null;
  const error = errorOf(line.report, challenge);
  if (challenge.ranking.first.by === POINTS_ID) {
    return { ...stacked(partsOf(line.report, challenge)), value, error };
  }
  const shown = value / unitSize;
  const segment: Segment = { part: 'measure', from: Math.min(0, shown), to: Math.max(0, shown) };
  const shownError = { below: error.below / unitSize, above: error.above / unitSize };
  return { segments: [segment], takenOff: null, value: shown, error: shownError };
}

/** Of the value that the ranking asks for first, in the engine's unit. */
export function errorOf(report: Report, challenge: Challenge): ErrorReach {
  const first = entryOf(report, challenge, report.attempt).values.get(challenge.ranking.first.by);
  return first === undefined ? NO_ERROR : errorReach(first);
}

export const hasError = ({ below, above }: ErrorReach): boolean => below > 0 || above > 0;

export const NO_ERROR: ErrorReach = { below: 0, above: 0 };

/** How far to either side a bar reaches, its error included. */
export function reachOf(bars: readonly Bar[]): { readonly least: number; readonly most: number } {
  const ends = bars.flatMap(({ segments, takenOff, value, error }) => [
    value - error.below,
    value + error.above,
    ...segments.flatMap(({ from, to }) => [from, to]),
    ...(takenOff === null ? [] : [takenOff.from]),
  ]);
  // An error alone does not draw the ruler out below 0: no build is lower than the table.
  const below = bars.some(({ value, takenOff }) => Math.min(value, takenOff?.from ?? 0) < 0);
  return { least: below ? Math.min(...ends) : 0, most: Math.max(0, ...ends) };
}

function stacked(parts: readonly Part[]): Pick<Bar, 'segments' | 'takenOff'> {
  const segments: Segment[] = [];
  let end = 0;
  for (const { id, points } of parts) {
    if (points <= 0) continue;
    segments.push({ part: id, from: end, to: end + points });
    end += points;
  }
  const less = parts.filter(({ points }) => points < 0);
  if (less.length === 0) return { segments, takenOff: null };
  const off = less.reduce((sum, { points }) => sum - points, 0);
  return { segments, takenOff: { from: end - off, to: end, parts: less.map(({ id }) => id) } };
}
