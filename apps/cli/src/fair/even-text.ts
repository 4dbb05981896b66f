// The fairest points, and whether all could ever earn alike.

import type { Evenness, EvenTask, ExactlyEven, Times } from '@cairnmark/scoring';
import { mostEven } from '@cairnmark/scoring';
import { pointsRuleText, timesText } from '@cairnmark/words';
import { section } from '../section.ts';
import { WORK } from './favour-text.ts';
import type { TerminalLab } from './lab.ts';
import { scoresText, totalsText } from './rule-text.ts';

export const evenTask = ({ data, options }: TerminalLab): EvenTask => ({
  data,
  goal: 'share',
  per: 'piece',
  most: options.most,
  negative: options.negative,
  step: options.step,
});

export function evenText(lab: TerminalLab): readonly string[] {
  const { options, words, say } = lab;
  const heading = say('fair.even', { most: words.counted('points', options.most) });
  return section(`${heading}:`, answerTexts(mostEven(evenTask(lab), WORK), lab));
}

function answerTexts(answer: Evenness, lab: TerminalLab): readonly string[] {
  const { data, words, say } = lab;
  if (answer.status === 'no-rows') return [say('lab.even-no-rows')];
  if (answer.status === 'not-settled') return [say('fair.not-settled', { count: answer.branches })];
  const { rule, exactly } = answer;
  const points = (value: number): string => words.counted('points', value);
  const spread = say('lab.even-spread', { lowest: points(rule.lowest), highest: points(rule.highest) });
  const percent = words.number(Math.round(1000 * (rule.share ?? 0)) / 10);
  return [
    `${words.capital(pointsRuleText(data.rows, rule.rates, lab))}.`,
    scoresText(rule, lab),
    rule.share === null ? spread : say('fair.even-share', { spread, percent }),
    ...(rule.gap === 0 ? [say('lab.even-exact')] : exactlyTexts(exactly, lab)),
  ];
}

function exactlyTexts(exactly: ExactlyEven, lab: TerminalLab): readonly string[] {
  const { data, options, words, say } = lab;
  if (exactly.possible)
    return [say('lab.even-exact-rule', { rule: pointsRuleText(data.rows, exactly.rule.rates, lab) })];
  const side = (times: readonly Times[]): string =>
    words.listed(times.map((one) => timesText(one.times, one.kind, lab)));
  const [these, those] = [side(exactly.these), side(exactly.those)];
  const line = (pieces: string, totals: readonly number[]): string =>
    `  ${say('fair.side', { pieces, totals: totalsText(totals, data.rows, lab) })}`;
  return [
    options.negative
      ? say('lab.even-never-negative', { these, those, unlike: say('lab.unlike-piece') })
      : say('lab.even-never', { these, those, alike: say('lab.alike-piece') }),
    line(these, exactly.totalOfThese),
    line(those, exactly.totalOfThose),
  ];
}
