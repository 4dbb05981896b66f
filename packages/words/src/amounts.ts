// Measures by name, with their amounts: "5 pieces", "25.5 cm", "1.24 cm³ per cm²", "3.5 of 4" for a judged criterion.

import type { Unit } from '@cairnmark/geometry';
import type { Catalogue } from './catalogue.ts';
import { lookUp } from './issue.ts';
import type { CountedThing } from './keys.ts';
import { trimmed } from './numbers.ts';
import { exact, inFull, inSteps, plusMinus, reading } from './quantities.ts';
import { fill } from './say.ts';
import { degreesText } from './tilts.ts';
import type { Quotient, ShownUnit } from './units.ts';
import { factUnit } from './units.ts';
import type { Voice } from './voice.ts';

/** What the fact ids of criteria and of kinds of piece begin with. */
const JUDGED = 'judged:';
const KIND = 'kind:';

/** The name of a measure that pupils read; of a criterion the name that the teacher gave it. */
export const measureName = (measure: string, voice: Voice): string =>
  nameIn(voice.words.names.measures, measure, voice);

/** The same in the trade's words, for the teacher. */
export const plainMeasureName = (measure: string, voice: Voice): string =>
  nameIn(voice.words.names.plainMeasures, measure, voice);

/** A measured amount in honest digits; a tilt is rounded down. `tolerance` in the unit of the measure. */
export function amount(measure: string, value: number, tolerance: number, voice: Voice): string {
  const { reader, words } = voice;
  if (reader.unitOf(measure) === 'rad' && value > 0) return degreesText(value, voice);
  return (
    withNoun(measure, value, voice) ??
    reading(value, shownAs(measure, voice), tolerance, reader.ruler, words.decimalMark)
  );
}

/** An amount that is known exactly, such as a limit, in full. */
export function exactAmount(measure: string, value: number, voice: Voice): string {
  const { reader, words } = voice;
  return withNoun(measure, value, voice) ?? exact(value, shownAs(measure, voice), reader.ruler, words.decimalMark);
}

/**
 * What a person read or decided, in full, with the decimals of the ruler. `beside`: another amount that it is told beside;
 * where a ruler in inches reads both alike, it is told in decimals of an inch.
 */
export function fullAmount(measure: string, value: number, beside: number | null, voice: Voice): string {
  const full = (one: number): string =>
    withNoun(measure, one, voice) ?? inFull(one, shownAs(measure, voice), voice.reader.ruler, voice.words.decimalMark);
  const isAlike = beside !== null && beside !== value && full(value) === full(beside);
  return isAlike ? exactAmount(measure, value, voice) : full(value);
}

/** A measured amount as it is read; in full where another one, from which it differs, reads the same. */
export function amountApart(measure: string, value: number, from: number, tolerance: number, voice: Voice): string {
  const read = amount(measure, value, tolerance, voice);
  const isAlike = value !== from && read === amount(measure, from, tolerance, voice);
  return isAlike ? fullAmount(measure, value, from, voice) : read;
}

/** A value rounded to whole `step`s, with the decimals of the step, so that a column of them lines up. */
export function roundedAmount(measure: string, value: number, step: number, voice: Voice): string {
  const { reader, words } = voice;
  return (
    withNoun(measure, value, voice) ?? inSteps(value, step, shownAs(measure, voice), reader.ruler, words.decimalMark)
  );
}

/** The unit in which the class reads a measure. */
export const shownUnit = (measure: string, voice: Voice): ShownUnit =>
  factUnit(shownAs(measure, voice), voice.reader.ruler);

/** "± 0.3 cm"; empty for a measure without error. */
export function errorText(measure: string, tolerance: number, voice: Voice): string {
  return plusMinus(tolerance, shownAs(measure, voice), voice.reader.ruler, voice.words.decimalMark);
}

/** "1 point", "2.5 points": the noun follows the number as it is shown, with `least` decimals and at most two. */
export function counted(thing: CountedThing, value: number, { names, decimalMark }: Catalogue, least = 0): string {
  const [one, several] = names.counted[thing];
  const number = trimmed(value, least, 2, decimalMark);
  return `${number} ${number === '1' || number === '−1' ? one : several}`;
}

export const isCounted = (measure: string, { names }: Catalogue): measure is CountedThing =>
  Object.hasOwn(names.counted, measure);

export const isJudged = (measure: string): boolean => measure.startsWith(JUDGED);

/** With a capital, for the beginning of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Puffins, Terns and Gannets". */
export function listed(items: readonly string[], and: string): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')}${and}${last}`;
}

function nameIn(table: Readonly<Record<string, string>>, measure: string, { reader }: Voice): string {
  if (isJudged(measure)) return reader.criterionName(measure.slice(JUDGED.length));
  if (measure.startsWith(KIND)) return reader.kindName(measure.slice(KIND.length));
  return lookUp(table, measure) ?? measure;
}

/** Measures that are one amount for each of another, though as numbers they are lengths. */
const QUOTIENTS: Readonly<Record<string, readonly [over: Unit, under: Unit]>> = {
  'volume-per-paper': ['mm3', 'mm2'],
  'area-to-perimeter': ['mm2', 'mm'],
};

function shownAs(measure: string, { reader, words }: Voice): Unit | Quotient {
  const quotient = Object.hasOwn(QUOTIENTS, measure) ? QUOTIENTS[measure] : undefined;
  if (quotient === undefined) return reader.unitOf(measure);
  const [over, under] = quotient;
  return { over, under, per: words.per };
}

/** What is counted, marked or timed; null for what has a unit. */
function withNoun(measure: string, value: number, { reader, words }: Voice): string | null {
  if (isJudged(measure)) return fill(words.results.mark, { mark: trimmed(value, 0, 2, words.decimalMark) });
  if (measure.startsWith(KIND)) return counted('pieces', value, words);
  if (isCounted(measure, words)) return counted(measure, value, words);
  const unit = reader.unitOf(measure);
  if (unit === 's') return counted('seconds', value, words);
  return unit === 'count' ? trimmed(value, 0, 2, words.decimalMark) : null;
}
