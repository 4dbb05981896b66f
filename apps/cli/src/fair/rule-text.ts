// Rules and pieces of the points lab in words.

import type { FavouringRule, LabRule } from '@cairnmark/scoring';
import type { TerminalLab } from './lab.ts';

/** "1 point for every face and −2 points for every edge"; what gives comes before what takes. `rows`: ids of the rates. */
export function ruleText(rows: readonly string[], rates: readonly number[], lab: TerminalLab): string {
  const given = rows.map((id, j) => ({ id, rate: rates[j] ?? 0 }));
  const ordered = [...given.filter(({ rate }) => rate > 0), ...given.filter(({ rate }) => rate < 0)];
  return lab.words.listed(ordered.map(({ id, rate }) => rateText(id, rate, lab)));
}

function rateText(id: string, rate: number, { kit, words, inClass, say }: TerminalLab): string {
  const points = words.counted('points', rate);
  const per = kit.rows.find((row) => row.id === id)?.per ?? 1;
  if (per !== 1)
    return say('lab.rate-amount', { points, per: inClass.exactAmount(id, per), measure: inClass.label(id) });
  // The noun alone: "1 face" without its number.
  return say('lab.rate-counted', { points, thing: inClass.exactAmount(id, 1).replace(/^1\s/u, '') });
}

export const kindName = (id: string, { kit }: Pick<TerminalLab, 'kit'>): string =>
  kit.kinds.find((kind) => kind.id === id)?.name ?? id;

/** "The cone earns 21 points, 1 more than the next." */
export function leadText({ scores, lead }: FavouringRule, favourite: string, lab: TerminalLab): string {
  const { kit, words, say } = lab;
  const own = scores[kit.kinds.findIndex(({ id }) => id === favourite)] ?? 0;
  const points = words.counted('points', own);
  return say('lab.rule-lead', { solid: kindName(favourite, lab), points, lead: words.number(lead) });
}

/** "Cube 6, Cuboid 6, ..." */
export function scoresText({ scores }: LabRule, { kit, words, say }: TerminalLab): string {
  const each = kit.kinds.map(({ name }, k) => say('fair.score', { solid: name, points: words.number(scores[k] ?? 0) }));
  return say('fair.scores', { scores: each.join(', ') });
}

/** "3 × Cube" */
export const timesText = (times: number, kind: string, lab: TerminalLab): string =>
  lab.say('lab.times', { count: times, solid: kindName(kind, lab) });

/** "faces 12, edges 18": what pieces have together, in the order of the rows. */
export const totalsText = (
  totals: readonly number[],
  rows: readonly string[],
  { inClass, words }: TerminalLab,
): string => rows.map((row, j) => `${inClass.label(row)} ${words.number(totals[j] ?? 0)}`).join(', ');
