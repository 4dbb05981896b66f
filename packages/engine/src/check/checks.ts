// The small questions that every check is made of. Each answers with the issues found, none when all is well.

import { secondsOf } from '../instant.ts';
import { POINTS_MOST } from '../limits.ts';
import type { EngineIssue } from './issues.ts';

export type Path = readonly (string | number)[];

/** Ids that an earlier item of the list has already. */
export function idsTwice(items: readonly { readonly id: string }[], path: Path): EngineIssue[] {
  const ids = items.map(({ id }) => id);
  return ids.flatMap((id, k): EngineIssue[] =>
    ids.indexOf(id) === k ? [] : [{ code: 'id-twice', path: [...path, k, 'id'], details: { id } }],
  );
}

/** A number that is not finite, or outside its range, ends included. */
export function outOfRange(value: number, path: Path, least: number, most: number): EngineIssue[] {
  if (Number.isFinite(value) && value >= least && value <= most) return [];
  return [{ code: 'number-out-of-range', path, details: { value, least, most } }];
}

/** Points may be taken as well as given. */
export function pointsOutOfRange(points: number, path: Path): EngineIssue[] {
  return outOfRange(points, path, -POINTS_MOST, POINTS_MOST);
}

export function unknownMeasure(measure: string, known: ReadonlySet<string>, path: Path): EngineIssue[] {
  return known.has(measure) ? [] : [{ code: 'measure-unknown', path, details: { measure } }];
}

/** A text that names no moment. */
export const noTime = (instant: string, path: Path): EngineIssue[] =>
  secondsOf(instant) === null ? [{ code: 'not-a-time', path, details: {} }] : [];
