// What decides a place: the values of the ranking rule's keys, each rounded once and turned so that more is better.

import type { Millionths } from '../rounding/fixed.ts';
import { fromMillionths, toMillionths } from '../rounding/fixed.ts';
import { roundMillionths } from '../rounding/round.ts';
import type { Facts, RankingKey, RankingRule } from '../types.ts';

/** One value of one build. */
export interface KeyValue {
  readonly by: string;
  /** The rounded value in the unit of the measure; null: not measured. */
  readonly value: number | null;
  /** What is compared: the rounded value, negated where less is better. */
  readonly merit: Millionths | null;
}

/** The values that decide, in the order of the keys. */
export function keyValues(values: Facts, rule: RankingRule): KeyValue[] {
  return [rule.first, ...rule.tieBreaks].map((key) => keyValue(values, key));
}

/** Negative when `a` is better, 0 when every key is equal. A value that was not measured comes after every other. */
export function compareKeys(a: readonly KeyValue[], b: readonly KeyValue[]): number {
  for (const [k, { merit: mine }] of a.entries()) {
    const theirs = b[k]?.merit ?? null;
    if (mine === theirs) continue;
    if (mine === null) return 1;
    if (theirs === null) return -1;
    return mine > theirs ? -1 : 1;
  }
  return 0;
}

function keyValue(values: Facts, { by, better, roundTo }: RankingKey): KeyValue {
  const value = values.get(by)?.value ?? null;
  if (value === null) return { by, value: null, merit: null };
  const rounded = roundMillionths(toMillionths(value), toMillionths(roundTo), 'nearest');
  return { by, value: fromMillionths(rounded), merit: better === 'more' ? rounded : -rounded };
}
