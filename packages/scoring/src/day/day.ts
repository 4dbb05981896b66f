// Standings of the day: the results of the challenges brought together by a named rule. Rules [D..] of RULES.md.
// Among equals the list goes by group id, as in a challenge: it decides nothing.

import { byGroup, places } from '../ranking/places.ts';
import type { Millionths } from '../rounding/fixed.ts';
import { fromMillionths, MILLIONTHS_IN_ONE, toMillionths } from '../rounding/fixed.ts';
import { divideRounded } from '../rounding/round.ts';
import type { DayRule, DayStanding, Standing } from '../types.ts';
import type { Totals } from './results.ts';
import { dayResults } from './results.ts';
import { weightOf } from './weight.ts';

/**
 * One standing a group that appears in any challenge: those with a place, the best first, then those without.
 * Both maps are keyed by challenge id; `totals` is used by the rule 'sum-of-points' alone. `notPlayed`: challenges at
 * which no group has an attempt yet; they are left out.
 * Throws RangeError for a negative weight.
 */
export function day(
  standingsByChallenge: ReadonlyMap<string, readonly Standing[]>,
  totals: ReadonlyMap<string, Totals>,
  rule: DayRule,
  notPlayed: ReadonlySet<string>,
): DayStanding[] {
  const parts = [...standingsByChallenge].flatMap(([challenge, standings]) => {
    const weight = weightOf(challenge, rule);
    if (weight === 0n || notPlayed.has(challenge)) return [];
    return [{ challenge, weight, results: dayResults(standings, totals.get(challenge) ?? new Map(), rule) }];
  });
  const groups = new Set([...standingsByChallenge.values()].flat().map(({ group }) => group));
  const sheets = [...groups].map((group) => sheetOf(group, parts, rule)).sort(byGroup);
  const placed = places(
    sheets.filter(({ total }) => total !== null),
    (a, b) => compareTotals(a.total, b.total, rule),
  );
  return [
    ...placed.map(({ item, place, sharedWith }) => standingOf(item, place, sharedWith)),
    ...sheets.filter(({ total }) => total === null).map((sheet) => standingOf(sheet, null, [])),
  ];
}

interface Part {
  readonly challenge: string;
  readonly weight: Millionths;
  readonly results: ReadonlyMap<string, number>;
}

/** One group's day; `total` is null when it takes no place. */
interface Sheet {
  readonly group: string;
  readonly results: DayStanding['results'];
  readonly total: Millionths | null;
}

function sheetOf(group: string, parts: readonly Part[], rule: DayRule): Sheet {
  const results = parts.map(({ challenge, results: all }) => ({ challenge, counts: all.get(group) ?? null }));
  return { group, results, total: totalOf(group, parts, rule) };
}

/** The weighted sum, or for 'mean-place' the weighted mean; each missing result stands at the mean of those present. */
function totalOf(group: string, parts: readonly Part[], rule: DayRule): Millionths | null {
  let [sum, weightPresent, weightOfAll] = [0n, 0n, 0n];
  for (const { weight, results } of parts) {
    const counts = results.get(group);
    weightOfAll += weight;
    if (counts === undefined) continue;
    weightPresent += weight;
    sum += weight * toMillionths(counts);
  }
  const complete = weightPresent === weightOfAll;
  if (weightPresent === 0n || !(complete || rule.meanOfThosePresent)) return null;
  return rule.kind === 'mean-place'
    ? divideRounded(sum, weightPresent, 'nearest')
    : divideRounded(sum * weightOfAll, weightPresent * MILLIONTHS_IN_ONE, 'nearest');
}

function compareTotals(a: Millionths | null, b: Millionths | null, { kind }: DayRule): number {
  if (a === b || a === null || b === null) return 0;
  const lessIsBetter = kind === 'mean-place';
  return a < b === lessIsBetter ? -1 : 1;
}

function standingOf({ group, results, total }: Sheet, place: number | null, sharedWith: readonly Sheet[]): DayStanding {
  return {
    group,
    place,
    total: total === null ? null : fromMillionths(total),
    results,
    present: results.filter(({ counts }) => counts !== null).length,
    of: results.length,
    sharedWith: sharedWith.map((sheet) => sheet.group),
  };
}
