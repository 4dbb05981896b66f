// The rules of a challenge, and those of its supply game, a sentence each.

import type { Requirement } from '@cairnmark/scoring';
import type { SheetContext } from './context.ts';
import { orderOnPaper } from './order-on-paper.ts';
import { sentence } from './sentence.ts';

export const ruleSentences = (rules: readonly Requirement[], { inClass, words }: SheetContext): readonly string[] =>
  rules.map((rule) => sentence(inClass.statedRule(asPhrase(rule)), words));

/** [] where pieces are not earned in a game. */
export const gameRules = ({ challenge, words }: SheetContext): readonly string[] =>
  challenge.supply === null ? [] : words.words.game(challenge.supply);

/** All that a class is told before it builds: what it must keep to and who wins; what earns points. */
export function readAloud(context: SheetContext): {
  readonly rules: readonly string[];
  readonly points: readonly string[];
} {
  const { challenge, inClass, sayPlan, words } = context;
  return {
    rules: [
      ...ruleSentences(challenge.requirements, context),
      sentence(orderOnPaper(context), words),
      sayPlan(`challenge.attempt-${challenge.attemptCounts}`),
      inClass.falling(challenge.fallen),
      ...gameRules(context),
    ],
    points: challenge.points.map((row) => sentence(inClass.statedRow(row), words)),
  };
}

/** What hangs on a rule stands behind its text, so the text is no sentence of its own there. */
const asPhrase = (rule: Requirement): Requirement =>
  rule.kind === 'judged' ? { ...rule, text: rule.text.replace(/(?<=[^.])\.$/, '') } : rule;
