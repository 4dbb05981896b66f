// Neighbours on the board that lie closer together than the ruler can tell. They are marked, never merged.

import type { BoardLine } from './lines.ts';
import { firstValue } from './lines.ts';

/** The values of two places that follow each other, as the ranking compares them. */
export interface Near {
  readonly upper: number;
  readonly lower: number;
  /** A group at the lower place. */
  readonly next: string;
}

/** By the group in the last row of the upper place. `lines` in the order of the places. */
export function nearMarks(lines: readonly BoardLine[]): ReadonlyMap<string, Near> {
  const marks = new Map<string, Near>();
  for (const [k, line] of lines.entries()) {
    const next = lines[k + 1];
    if (next === undefined || next.place === null || next.place === line.place) continue;
    const [upper, lower] = [firstValue(line), firstValue(next)];
    if (upper === null || lower === null || !placesAreNear(line, next, lines)) continue;
    marks.set(line.group, { upper, lower, next: next.group });
  }
  return marks;
}

/** A mark between two places stands only when both are shown. */
export function shownMarks(
  marks: ReadonlyMap<string, Near>,
  lines: readonly BoardLine[],
  isShown: (line: BoardLine) => boolean,
): ReadonlyMap<string, Near> {
  const shown = new Set(lines.filter(isShown).map(({ group }) => group));
  return new Map([...marks].filter(([group, { next }]) => shown.has(group) && shown.has(next)));
}

/** With whom a group shares its place and whom it is near: a group that is not shown yet is not named beside another. */
export function shownNear(
  { standing: { sharedWith, withinErrorOf } }: BoardLine,
  lines: readonly BoardLine[],
  isShown: (line: BoardLine) => boolean,
): Pick<BoardLine['standing'], 'sharedWith' | 'withinErrorOf'> {
  const shown = new Set(lines.filter(isShown).map(({ group }) => group));
  const told = (groups: readonly string[]): readonly string[] => groups.filter((group) => shown.has(group));
  return { sharedWith: told(sharedWith), withinErrorOf: told(withinErrorOf) };
}

export const NO_MARKS: ReadonlyMap<string, Near> = new Map();

/** Any group of the one place within measuring error of any group of the other. */
function placesAreNear(line: BoardLine, next: BoardLine, lines: readonly BoardLine[]): boolean {
  const at = (place: number | null) => lines.filter((one) => one.place === place);
  const below = new Set(at(next.place).map(({ group }) => group));
  return at(line.place).some(({ standing }) => standing.withinErrorOf.some((other) => below.has(other)));
}
