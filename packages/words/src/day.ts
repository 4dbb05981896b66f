// The day: how it adds up, what each challenge brings, and what to know before reading the places.

import type { DayRule, DayStanding, DayWarning } from '@cairnmark/scoring';
import { counted, listed } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import { lookUp } from './issue.ts';
import { trimmed } from './numbers.ts';
import { fill } from './say.ts';

/** How the results of the day are put together: how they are added, what counts more, what a missing one does. */
export function daySentences(
  rule: DayRule,
  challengeName: (id: string) => string,
  words: Catalogue,
): readonly string[] {
  const { results, decimalMark, and, ordinal } = words;
  const points = listed(
    rule.placePoints.map((value, k) =>
      fill(results['day.points-of-place'], { points: counted('points', value, words), place: ordinal(k + 1) }),
    ),
    and,
  );
  const weights = Object.entries(rule.weights).filter(([, weight]) => weight !== 1);
  return [
    fill(results[`day.${rule.kind}`], { points }),
    ...weights.map(([id, weight]) =>
      fill(results['day.weight'], { challenge: challengeName(id), times: trimmed(weight, 0, 3, decimalMark) }),
    ),
    results[rule.meanOfThosePresent ? 'day.mean-stands-in' : 'day.missing-is-out'],
  ];
}

/** What one challenge, or all of them, bring to the day: "12 points", or "place 1.5" where places are averaged. */
export function dayValue({ kind }: DayRule, value: number, words: Catalogue): string {
  if (kind !== 'mean-place') return counted('points', value, words);
  return fill(words.results['day.place'], { place: trimmed(value, 0, 2, words.decimalMark) });
}

/** "2 of 3": results present, of how many challenges. */
export function presentText({ present, of }: DayStanding, { results }: Catalogue): string {
  return fill(results['day.present'], { present, of });
}

/** The names that a class gave to things, by their ids. */
export interface ClassNames {
  readonly challenge: (id: string) => string;
  readonly criterion: (challenge: string, id: string) => string;
  readonly group: (id: string) => string;
}

/** What a class should know before it reads the places. */
export function warningSentence(warning: DayWarning, names: ClassNames, words: Catalogue): string {
  const { results, and } = words;
  switch (warning.code) {
    case 'points-of-different-units':
      return fill(results['warning.points-of-different-units'], {
        challenges: listed(warning.challenges.map(names.challenge), and),
        units: listed(
          warning.units.map((unit) => lookUp(words.names.units, unit) ?? unit),
          and,
        ),
      });
    case 'judges-of-different-groups': {
      const judges = warning.judges.map(({ judge, groups }) =>
        fill(results['warning.judge'], { judge, groups: listed(groups.map(names.group), and) }),
      );
      return fill(results['warning.judges-of-different-groups'], {
        challenge: names.challenge(warning.challenge),
        criterion: names.criterion(warning.challenge, warning.criterion),
        judges: judges.join('; '),
      });
    }
  }
}
