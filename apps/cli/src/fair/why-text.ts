// Why no points favour a solid, in sentences, with the sums that prove it.

import type { FavourTask, WhyNot } from '@cairnmark/scoring';
import type { TerminalLab } from './lab.ts';
import { kindName, ruleText, timesText, totalsText } from './rule-text.ts';

/** One sentence or two. */
export function whyText(why: WhyNot, task: FavourTask, lab: TerminalLab): string {
  const { say, words } = lab;
  const solid = kindName(task.favourite, lab);
  switch (why.code) {
    case 'zero':
      return say('lab.why-zero');
    case 'twin':
    case 'dominated':
      return say(`lab.why-${why.code}`, { other: kindName(why.by, lab) });
    case 'mix':
      return say(task.negative ? 'lab.why-mix-exact' : 'lab.why-mix', { solid, ...mixSides(why, task, lab) });
    case 'lead-out-of-reach': {
      const { greatestLead, atGreatest, maxNeeded, atNeeded } = why;
      const rows = task.data.rows;
      const most = words.counted('points', task.most);
      const lead = words.counted('points', greatestLead);
      const here =
        atGreatest === null
          ? say('lab.why-lead-never', { most, solid })
          : say('lab.why-lead', { most, solid, lead, rule: ruleText(rows, atGreatest.rates, lab) });
      if (maxNeeded === null || atNeeded === null) return here;
      const needed = { most: words.counted('points', maxNeeded), rule: ruleText(rows, atNeeded.rates, lab) };
      return `${here} ${say('lab.why-needed', needed)}`;
    }
  }
}

/** The sums, a line a side: of the solid and of those that are never behind it. */
export function sidesText(why: WhyNot, { data, favourite }: FavourTask, lab: TerminalLab): readonly string[] {
  const { say } = lab;
  const has = (kind: string): readonly number[] => data.kinds.find(({ id }) => id === kind)?.measures ?? [];
  const line = (pieces: string, totals: readonly number[]): string =>
    say('fair.side', { pieces, totals: totalsText(totals, data.rows, lab) });
  switch (why.code) {
    case 'twin':
    case 'dominated':
      return [favourite, why.by].map((kind) => line(kindName(kind, lab), has(kind)));
    case 'mix': {
      const { these, those } = mixSides(why, { favourite }, lab);
      return [line(these, why.totalOfFavourite), line(those, why.totalOfOthers)];
    }
    default:
      return [];
  }
}

function mixSides(
  { times, others }: Extract<WhyNot, { code: 'mix' }>,
  { favourite }: Pick<FavourTask, 'favourite'>,
  lab: TerminalLab,
): { readonly these: string; readonly those: string } {
  return {
    these: timesText(times, favourite, lab),
    those: lab.words.listed(others.map((one) => timesText(one.times, one.kind, lab))),
  };
}
