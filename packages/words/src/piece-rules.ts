// Rules about which pieces may be used, and how many of them: what is said of a build that keeps or breaks them.

import type { Requirement, RequirementLine } from '@cairnmark/scoring';
import { listed } from './amounts.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

export type PieceRule = Extract<Requirement, { kind: 'only-kinds' | 'only-earned' }>;

/** "Only pieces that the group earned may be used. It uses 4 of large cube; the group has 3." */
export function pieceRuleSentence(line: RequirementLine, rule: PieceRule, voice: Voice): string {
  const { results } = voice.words;
  const stated = { rule: fill(results[`pieces.${rule.kind}`], { kinds: kindNames(rule, voice) }) };
  if (line.verdict === 'kept') return fill(results['pieces.kept'], stated);
  if (line.verdict === 'broken') {
    return fill(results['pieces.broken'], { ...stated, breaches: breachSentences(line, rule, voice) });
  }
  return fill(results[line.measure === EARNED ? 'pieces.earned-unknown' : 'pieces.not-listed'], stated);
}

/** Kinds that the rule names; none where it names no kinds. */
export const kindNames = (rule: PieceRule, { words, reader }: Voice): string =>
  rule.kind === 'only-kinds' ? listed(rule.kinds.map(reader.kindName), words.and) : '';

/** The fact that a line names when it is not known what the group earned. */
const EARNED = 'earned:pieces';

function breachSentences({ breaches }: RequirementLine, { kind: of }: PieceRule, { words, reader }: Voice): string {
  const sentences = breaches.map(({ kind, used, allowed }) =>
    fill(words.results[`breach.${of}`], { kind: reader.kindName(kind), used, allowed }),
  );
  return sentences.join(' ');
}
