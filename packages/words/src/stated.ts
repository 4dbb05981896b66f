// A challenge as it is announced: its rules with what hangs on them, and the rows of its points table.

import type { PointsRow, Requirement } from '@cairnmark/scoring';
import { capital, counted, exactAmount, isCounted, isJudged, measureName } from './amounts.ts';
import { trimmed } from './numbers.ts';
import { kindNames } from './piece-rules.ts';
import { boundText } from './rules.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** "exactly 5 pieces (must be kept)". */
export function statedRule(rule: Requirement, voice: Voice): string {
  const { words } = voice;
  const { consequence } = rule;
  const points = consequence.kind === 'must' ? '' : counted('points', consequence.points, words);
  return fill(words.results[`stated.${consequence.kind}`], { rule: ruleTitle(rule, voice), points });
}

/** The rule in a few words: "exactly 5 pieces", "area on the table at most 24 cm²", or the text of the teacher. */
export function ruleTitle(rule: Requirement, voice: Voice): string {
  const { results } = voice.words;
  switch (rule.kind) {
    case 'measured': {
      const bound = boundText(rule, voice);
      if (isCounted(rule.measure, voice.words)) return bound;
      return fill(results['stated.measured'], { measure: measureName(rule.measure, voice), bound });
    }
    case 'judged':
      return rule.text;
    case 'only-kinds':
    case 'only-earned':
      return fill(results[`stated.${rule.kind}`], { kinds: kindNames(rule, voice) });
  }
}

/** "Height: 1 point for every 1 cm, rounded down, at most 30 points". */
export function statedRow(row: PointsRow, voice: Voice): string {
  const { words } = voice;
  const { results, names } = words;
  const points = (value: number): string => counted('points', value, words);
  let text = fill(results[rateKey(row)], {
    measure: capital(measureName(row.measure, voice)),
    points: points(row.points),
    per: exactAmount(row.measure, row.per, voice),
    count: trimmed(row.per, 0, 2, words.decimalMark),
  });
  if (row.rounding !== 'none')
    text = fill(results['row.rounded'], { row: text, rounding: names.rounding[row.rounding] });
  if (row.capPoints !== undefined) text = fill(results['row.cap'], { row: text, limit: points(row.capPoints) });
  if (row.floorPoints !== undefined) text = fill(results['row.floor'], { row: text, limit: points(row.floorPoints) });
  return text;
}

/** A mark of 2 is twice one mark: "every 1 of 4" would be read as a quarter. */
function rateKey({ measure, per }: PointsRow): 'row.every' | 'row.mark' | 'row.marks' {
  if (!isJudged(measure)) return 'row.every';
  return per === 1 ? 'row.mark' : 'row.marks';
}
