// The rules of a challenge, and those of its supply game, a sentence each.

import type { Requirement } from '@cairnmark/scoring';
import type { SheetContext } from './context.ts';
import { sentence } from './sentence.ts';

export const ruleSentences = (rules: readonly Requirement[], { inClass, words }: SheetContext): readonly string[] =>
  rules.map((rule) => sentence(inClass.statedRule(asPhrase(rule)), words));

/** [] where pieces are not earned in a game. */
export const gameRules = ({ challenge, words }: SheetContext): readonly string[] =>
  challenge.supply === null ? [] : words.words.game(challenge.supply);

/** What hangs on a rule stands behind its text, so the text is no sentence of its own there. */
const asPhrase = (rule: Requirement): Requirement =>
  rule.kind === 'judged' ? { ...rule, text: rule.text.replace(/(?<=[^.])\.$/, '') } : rule;
