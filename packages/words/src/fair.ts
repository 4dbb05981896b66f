// The points lab in sentences: rules of points, pieces, and why no points favour a solid. For the screen and for the terminal.

import type { LabKit } from '@cairnmark/engine';
import type { FavouringRule, FavourTask, WhyNot } from '@cairnmark/scoring';
import type { ClassWords } from './class-words.ts';
import type { TalkWords } from './talk.ts';
import type { Words } from './words.ts';

/** The kit as the lab sees it, and the words of the language, of the class and of the talk after the build. */
export interface FairVoice {
  readonly kit: Pick<LabKit, 'rows' | 'kinds'>;
  readonly words: Pick<Words, 'listed' | 'counted' | 'number'>;
  readonly inClass: Pick<ClassWords, 'exactAmount' | 'label'>;
  readonly say: TalkWords['say'];
}

/** What the search was for. */
export type Sought = Pick<FavourTask, 'favourite' | 'most' | 'negative'> & {
  /** Ids of the rows that might count, in the order of the rates. */
  readonly rows: readonly string[];
};

/** "1 point for every face and −2 points for every 10 cm² of paper"; what gives comes before what takes. `rows`: ids of the rates. */
export function pointsRuleText(rows: readonly string[], rates: readonly number[], voice: FairVoice): string {
  const given = rows.map((id, j) => ({ id, rate: rates[j] ?? 0 }));
  const ordered = [...given.filter(({ rate }) => rate > 0), ...given.filter(({ rate }) => rate < 0)];
  return voice.words.listed(ordered.map(({ id, rate }) => rateText(id, rate, voice)));
}

function rateText(id: string, rate: number, { kit, words, inClass, say }: FairVoice): string {
  const points = words.counted('points', rate);
  const per = kit.rows.find((row) => row.id === id)?.per ?? 1;
  if (per !== 1)
    return say('lab.rate-amount', { points, per: inClass.exactAmount(id, per), measure: inClass.label(id) });
  // The noun alone: "1 face" without its number.
  return say('lab.rate-counted', { points, thing: inClass.exactAmount(id, 1).replace(/^1\s/u, '') });
}

/** The name of a kind; its id where the kit has none of it. */
export const labKindName = (id: string, { kit }: Pick<FairVoice, 'kit'>): string =>
  kit.kinds.find((kind) => kind.id === id)?.name ?? id;

/** "3 × Cube" */
export const timesText = (count: number, kind: string, voice: FairVoice): string =>
  voice.say('lab.times', { count, solid: labKindName(kind, voice) });

/** "The cone earns 21 points, 1 more than the next." */
export function leadText({ scores, lead }: FavouringRule, favourite: string, voice: FairVoice): string {
  const own = scores[voice.kit.kinds.findIndex(({ id }) => id === favourite)] ?? 0;
  const points = voice.words.counted('points', own);
  return voice.say('lab.rule-lead', { solid: labKindName(favourite, voice), points, lead: voice.words.number(lead) });
}

/** Why no points favour the solid: one sentence or two. */
export function whyNotSentences(why: WhyNot, sought: Sought, voice: FairVoice): readonly string[] {
  const { say } = voice;
  switch (why.code) {
    case 'zero':
      return [say('lab.why-zero')];
    case 'twin':
    case 'dominated':
      return [say(`lab.why-${why.code}`, { other: labKindName(why.by, voice) })];
    case 'mix': {
      const solid = labKindName(sought.favourite, voice);
      const sides = mixSides(why, sought.favourite, voice);
      return [say(sought.negative ? 'lab.why-mix-exact' : 'lab.why-mix', { solid, ...sides })];
    }
    case 'lead-out-of-reach':
      return outOfReach(why, sought, voice);
  }
}

/** The pieces of the solid, and those of others that are never behind them. */
export const mixSides = (
  { times, others }: Extract<WhyNot, { code: 'mix' }>,
  favourite: string,
  voice: FairVoice,
): { readonly these: string; readonly those: string } => ({
  these: timesText(times, favourite, voice),
  those: voice.words.listed(others.map((one) => timesText(one.times, one.kind, voice))),
});

function outOfReach(
  { greatestLead, atGreatest, maxNeeded, atNeeded }: Extract<WhyNot, { code: 'lead-out-of-reach' }>,
  { favourite, most, rows }: Sought,
  voice: FairVoice,
): readonly string[] {
  const { say, words } = voice;
  const here = { most: words.counted('points', most), solid: labKindName(favourite, voice) };
  const first =
    atGreatest === null
      ? say('lab.why-lead-never', here)
      : say('lab.why-lead', {
          ...here,
          lead: words.counted('points', greatestLead),
          rule: pointsRuleText(rows, atGreatest.rates, voice),
        });
  if (maxNeeded === null || atNeeded === null) return [first];
  const needed = { most: words.counted('points', maxNeeded), rule: pointsRuleText(rows, atNeeded.rates, voice) };
  return [first, say('lab.why-needed', needed)];
}
