// Why a piece in hand may not be put where it is held.

import type { EditIssue } from '@cairnmark/editing';

/** Each has a label in the scene (`drag.none-left`) and a sentence for the line that is read out (`edit.none-left`). */
export type Refusal = 'off-table' | 'none-left' | 'no-room' | 'not-here';

/** In one word what the editor has against it; of several reasons the one that says best what to do. */
export function refusalOf(issues: readonly EditIssue[]): Refusal {
  const codes = issues.map(({ code }) => code);
  if (codes.includes('none-left')) return 'none-left';
  if (codes.includes('overlaps')) return 'no-room';
  return codes.includes('position-too-far') ? 'off-table' : 'not-here';
}
