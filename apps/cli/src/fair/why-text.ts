// The sums that prove why no points favour a solid.

import type { FavourTask, WhyNot } from '@cairnmark/scoring';
import { labKindName, mixSides } from '@cairnmark/words';
import type { TerminalLab } from './lab.ts';
import { totalsText } from './rule-text.ts';

/** The sums, a line a side: of the solid and of those that are never behind it. */
export function sidesText(why: WhyNot, { data, favourite }: FavourTask, lab: TerminalLab): readonly string[] {
  const { say } = lab;
  const has = (kind: string): readonly number[] => data.kinds.find(({ id }) => id === kind)?.measures ?? [];
  const line = (pieces: string, totals: readonly number[]): string =>
    say('fair.side', { pieces, totals: totalsText(totals, data.rows, lab) });
  switch (why.code) {
    case 'twin':
    case 'dominated':
      return [favourite, why.by].map((kind) => line(labKindName(kind, lab), has(kind)));
    case 'mix': {
      const { these, those } = mixSides(why, favourite, lab);
      return [line(these, why.totalOfFavourite), line(those, why.totalOfOthers)];
    }
    default:
      return [];
  }
}
