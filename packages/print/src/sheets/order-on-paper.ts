// What the places go by, as it stands on paper.

import type { RankingKey } from '@cairnmark/scoring';
import type { SheetContext } from './context.ts';

/** A rounding that nobody can see on a ruler is left away: it keeps the sums of the app apart from noise, and is no rule. */
export function orderOnPaper({ challenge: { ranking }, inClass }: SheetContext): string {
  const told = (key: RankingKey): RankingKey =>
    key.roundTo < FINEST_SHARE * inClass.unit(key.by).size ? { ...key, roundTo: 0 } : key;
  return inClass.order({ first: told(ranking.first), tieBreaks: ranking.tieBreaks.map(told) });
}

/** No unit (of the unit that a measure is shown in). Just below a tenth, which itself is told. */
const FINEST_SHARE = 0.0999;
