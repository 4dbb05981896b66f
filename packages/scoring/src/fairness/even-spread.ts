// How far the scores of a rule lie apart.

import type { EvenRule } from './even-types.ts';
import type { LabRule } from './types.ts';

export function withSpread(rule: LabRule): EvenRule {
  const [lowest, highest] = [Math.min(...rule.scores), Math.max(...rule.scores)];
  const isShare = lowest >= 0 && highest > 0;
  return { ...rule, lowest, highest, gap: highest - lowest, share: isShare ? lowest / highest : null };
}
