// The one door to the words of a language: codes and numbers go in, sentences come out.

import type { Issue } from '@cairnmark/geometry';
import type { DayRule, DayStanding, DayWarning, SupplyRule } from '@cairnmark/scoring';
import { capital, counted, listed } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import type { ClassWords } from './class-words.ts';
import { classWords } from './class-words.ts';
import type { ClassNames } from './day.ts';
import { daySentences, dayValue, presentText, warningSentence } from './day.ts';
import { issueSentence, placeText } from './issue.ts';
import type { CautionTexts, CountedThing, NameTables } from './keys.ts';
import { trimmed } from './numbers.ts';
import type { Reader } from './reader.ts';
import { gameSentences } from './supplies.ts';

export interface Words {
  /** The names of solids, sizes, choices and kinds of value. */
  readonly names: NameTables;
  readonly cautions: CautionTexts;
  /** What is wrong, where, and how to mend it. */
  issue(issue: Issue): string;
  /** "attempts 3, layout, pieces 2": positions count from 1. */
  place(path: Issue['path']): string;
  /** A number alone, with the decimals it has (three at most), but with `least` of them. */
  number(value: number, least?: number): string;
  /** "1 piece", "2.5 points"; with `least` decimals, as beside numbers that need them. */
  counted(thing: CountedThing, value: number, least?: number): string;
  /** "Puffins, Terns and Gannets". */
  listed(items: readonly string[]): string;
  capital(text: string): string;
  /** "2nd", "2.º". */
  ordinal(place: number): string;
  /** How the results of the day are put together. */
  day(rule: DayRule, challengeName: (id: string) => string): readonly string[];
  /** What a challenge or the whole day brings: "12 points", "place 1.5". */
  dayValue(rule: DayRule, value: number): string;
  /** "2 of 3": results present. */
  present(standing: DayStanding): string;
  /** What a class should know before it reads the places of the day. */
  dayWarning(warning: DayWarning, names: ClassNames): string;
  /** The rules of a supply game. */
  game(rule: SupplyRule): readonly string[];
  /** The words of a class that reads with one ruler and has its own names for things. */
  inClass(reader: Reader): ClassWords;
}

export function wordsIn(words: Catalogue): Words {
  return {
    names: words.names,
    cautions: words.cautions,
    issue: (issue) => issueSentence(issue, words),
    place: placeText,
    number: (value, least = 0) => trimmed(value, least, 3, words.decimalMark),
    counted: (thing, value, least = 0) => counted(thing, value, words, least),
    listed: (items) => listed(items, words.and),
    capital,
    ordinal: words.ordinal,
    day: (rule, challengeName) => daySentences(rule, challengeName, words),
    dayValue: (rule, value) => dayValue(rule, value, words),
    present: (standing) => presentText(standing, words),
    dayWarning: (warning, names) => warningSentence(warning, names, words),
    game: (rule) => gameSentences(rule, words),
    inClass: (reader) => classWords({ words, reader }),
  };
}
