// The small parts that every record is made of: ids, names, lengths, lists with a limit. Lengths mm, angles rad.

import * as z from 'zod/mini';
import {
  ID_CHARACTERS_MOST,
  LENGTH_MM_MOST,
  NAME_CHARACTERS_MOST,
  POINTS_MOST,
  SECONDS_MOST,
  TEXT_CHARACTERS_MOST,
  TURN_RAD_MOST,
  VALUE_MOST,
} from '../limits.ts';

/** Small letters, digits and single hyphens. `constructor` is kept out: every JavaScript object answers to that key. */
export const ID_PATTERN = /^(?!constructor$)[a-z0-9]+(?:-[a-z0-9]+)*$/;
/** Ids, or two of them parted by a colon, such as `judged:idea`. */
export const MEASURE_PATTERN = /^[a-z0-9]+(?:[-:][a-z0-9]+)*$/;
/** Letters, signs and blanks of any script, without control characters, which could steer a terminal. */
export const TEXT_PATTERN = /^[^\p{Cc}]*$/u;

/** A text too long is not searched for its other faults. */
const atMost = (characters: number) => z.maxLength(characters, { abort: true });

export const id = z.string().check(atMost(ID_CHARACTERS_MOST), z.regex(ID_PATTERN));
/** Id of a measure; `judged:` or `kind:` with the id of a criterion or a kind; or `points`. */
export const measure = z.string().check(atMost(2 * ID_CHARACTERS_MOST), z.regex(MEASURE_PATTERN));
export const name = z.string().check(z.minLength(1), atMost(NAME_CHARACTERS_MOST), z.regex(TEXT_PATTERN));
export const text = z.string().check(z.minLength(1), atMost(TEXT_CHARACTERS_MOST), z.regex(TEXT_PATTERN));
/** ISO 8601 with zone, for instance 2026-03-05T10:20:00+01:00. */
export const instant = z.iso.datetime({ offset: true });

export const between = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
export const wholeBetween = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));
export const lengthMm = between(0, LENGTH_MM_MOST);
export const positionMm = between(-LENGTH_MM_MOST, LENGTH_MM_MOST);
export const turnRad = between(-TURN_RAD_MOST, TURN_RAD_MOST);
export const seconds = between(0, SECONDS_MOST);
export const points = between(-POINTS_MOST, POINTS_MOST);
/** A measure of a build in its own unit. */
export const measured = between(0, VALUE_MOST);

/** Values by name. Keys are put in order, so that the same record always gives the same file. */
export function byName<T extends z.core.$ZodType>(key: z.ZodMiniString, value: T) {
  return z.record(key, value).check(z.overwrite(inOrder));
}

export const byId = <T extends z.core.$ZodType>(value: T) => byName(id, value);

const inOrder = <V>(record: Record<string, V>): Record<string, V> =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
