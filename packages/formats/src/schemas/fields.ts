// The small parts that every record is made of: ids, names, lengths, lists with a limit. Lengths mm, angles rad.

import * as z from 'zod/mini';
import {
  ID_CHARACTERS_MOST,
  ISSUES_TOLD_MOST,
  LENGTH_MM_MOST,
  NAME_CHARACTERS_MOST,
  NAMES_MOST,
  POINTS_MOST,
  SECONDS_MOST,
  TEXT_CHARACTERS_MOST,
  TURN_RAD_MOST,
  VALUE_MOST,
} from '../limits.ts';

/** Small letters, digits and single hyphens. `constructor` is kept out: every JavaScript object answers to that key. */
export const ID_PATTERN = /^(?!constructor$)[a-z0-9]+(?:-[a-z0-9]+)*$/;
/** Letters, signs and blanks of any script, without control characters, which could steer a terminal. */
export const TEXT_PATTERN = /^[^\p{Cc}]*$/u;

/** A text too long is not searched for its other faults. */
const atMost = (characters: number) => z.maxLength(characters, { abort: true });

export const id = z.string().check(atMost(ID_CHARACTERS_MOST), z.regex(ID_PATTERN));
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

/** A list of at most `most`. The length is looked at first, so that a list far too long is not read to its end. */
export function listOf<T extends z.core.$ZodType>(item: T, most: number) {
  const items = z.array(item).check(z.maxLength(most), firstFaults());
  return z.pipe(z.array(z.unknown()).check(z.maxLength(most)), items);
}

/** Values by name. Keys are put in order, so that the same record always gives the same file. */
export function byName<T extends z.core.$ZodType>(key: z.ZodMiniString, value: T) {
  const named = z.record(key, value).check(firstFaults(), z.overwrite(inOrder));
  return z.pipe(z.record(z.string(), z.unknown()).check(z.refine(isNotCrowded)), named);
}

export const byId = <T extends z.core.$ZodType>(value: T) => byName(id, value);

/** Of what is wrong inside a list no more is kept than can be told, so that millions of faults do not fill the memory. */
function firstFaults<T>() {
  return z.check<T>(({ issues }) => void issues.splice(ISSUES_TOLD_MOST + 1), { when: () => true });
}

const isNotCrowded = (record: Record<string, unknown>): boolean => Object.keys(record).length <= NAMES_MOST;

const inOrder = <V>(record: Record<string, V>): Record<string, V> =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
