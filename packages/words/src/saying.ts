// Which sentence a verdict gets: some verdicts are reached from two sides, and each side has words of its own.

import type { Verdict } from '@cairnmark/geometry';

export type Saying =
  | Exclude<Verdict, 'too-close-to-call'>
  | 'too-close-stands'
  | 'too-close-falls'
  | 'margin-not-decided';

/** `stands`: by the bare equations; null when that was not decided. */
export function sayingOf({ verdict, stands }: { readonly verdict: Verdict; readonly stands: boolean | null }): Saying {
  if (verdict === 'too-close-to-call') return stands === false ? 'too-close-falls' : 'too-close-stands';
  return verdict === 'not-decided' && stands === true ? 'margin-not-decided' : verdict;
}
