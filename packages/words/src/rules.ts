// Rules kept or broken, each with the number and the limit, what that costs or earns, and what a person noted; pieces that
// the kit does not have.

import type { StockBreach } from '@cairnmark/engine';
import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import { amountApart, capital, counted, exactAmount, isCounted, measureName } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import { pieceRuleSentence } from './piece-rules.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

type MeasuredRule = Extract<Requirement, { kind: 'measured' }>;

/** "6 pieces. The rule says exactly 5 pieces. It costs 2 points." `tolerance` is that of the measured value. */
export function ruleSentence(line: RequirementLine, rule: Requirement, tolerance: number, voice: Voice): string {
  const { results } = voice.words;
  const told = withPoints(line, verdictSentence(line, rule, tolerance, voice), voice);
  return line.note === null ? told : fill(results['rule.note'], { sentence: told, note: line.note });
}

/** "exactly 5 pieces", "at most 60 cm²". */
export function boundText({ measure, comparison, limit }: MeasuredRule, voice: Voice): string {
  return fill(voice.words.results[`bound.${comparison}`], { limit: exactAmount(measure, limit, voice) });
}

/** "It uses 4 of large cube; the kit has 3." */
export function stockSentence({ kind, used, stock }: StockBreach, { words, reader }: Voice): string {
  return fill(words.results.stock, { kind: reader.kindName(kind), used, stock });
}

function verdictSentence(line: RequirementLine, rule: Requirement, tolerance: number, voice: Voice): string {
  switch (rule.kind) {
    case 'measured':
      return measuredSentence(line, rule, tolerance, voice);
    case 'judged':
      return judgedSentence(line, rule.text, voice.words);
    case 'only-kinds':
    case 'only-earned':
      return pieceRuleSentence(line, rule, voice);
  }
}

/** With what a broken rule costs, or a kept one earns, or that it is not known whether it costs. */
function withPoints({ verdict, consequence }: RequirementLine, sentence: string, { words }: Voice): string {
  if (consequence.kind === 'must') return sentence;
  const points = counted('points', consequence.points, words);
  if (consequence.kind === 'costs' && verdict === 'not-measured') {
    return fill(words.results['rule.not-known'], { sentence, points });
  }
  if (verdict !== (consequence.kind === 'costs' ? 'broken' : 'kept')) return sentence;
  return fill(words.results[`rule.${consequence.kind}`], { sentence, points });
}

function judgedSentence({ verdict }: RequirementLine, text: string, { results }: Catalogue): string {
  if (verdict === 'kept') return fill(results['judged.kept'], { text });
  if (verdict === 'broken') return fill(results['judged.broken'], { text });
  return fill(results['judged.not-judged'], { text });
}

function measuredSentence(
  { value, verdict }: RequirementLine,
  rule: MeasuredRule,
  tolerance: number,
  voice: Voice,
): string {
  const { words } = voice;
  const bound = boundText(rule, voice);
  const measure = capital(measureName(rule.measure, voice));
  if (value === null) return fill(words.results['rule.not-measured'], { measure, bound });
  const shown = amountApart(rule.measure, value, rule.limit, tolerance, voice);
  const subject = isCounted(rule.measure, words) ? shown : fill(words.results.subject, { measure, value: shown });
  return fill(words.results[verdict === 'broken' ? 'rule.broken' : 'rule.kept'], { subject, bound });
}
