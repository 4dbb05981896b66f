// Points that favour one solid, or why there are none and what would help.

import type { Favouring, FavourTask, Offer, WhyNot } from '@cairnmark/scoring';
import { favour, offers } from '@cairnmark/scoring';
import { labKindName, leadText, pointsRuleText, whyNotSentences } from '@cairnmark/words';
import { section } from '../section.ts';
import type { TerminalLab } from './lab.ts';
import { scoresText } from './rule-text.ts';
import { sidesText } from './why-text.ts';

/** Thousands of times what the kit of a school takes; the terminal has no button to stop it. */
export const WORK = { branchesMost: 100_000 } as const;

export const favourTask = (favourite: string, { data, options }: TerminalLab): FavourTask => ({
  data,
  favourite,
  lead: options.lead,
  most: options.most,
  negative: options.negative,
  step: options.step,
});

/** All about one solid. */
export function favourText(favourite: string, lab: TerminalLab): readonly string[] {
  const { options, words, say } = lab;
  const task = favourTask(favourite, lab);
  const answer = favour(task, { order: 'fewest-rows', rules: options.rules }, WORK);
  const heading = say('fair.one', {
    solid: labKindName(favourite, lab),
    lead: words.counted('points', task.lead),
    most: words.counted('points', task.most),
  });
  return section(`${heading}:`, answerTexts(answer, task, lab));
}

function answerTexts(answer: Favouring, task: FavourTask, lab: TerminalLab): readonly string[] {
  const { say, words } = lab;
  const solid = labKindName(task.favourite, lab);
  switch (answer.status) {
    case 'not-settled':
      return [say('fair.not-settled', { count: answer.branches })];
    case 'impossible': {
      const isLead = answer.why.code === 'lead-out-of-reach';
      return [
        say(isLead ? 'lab.cannot-so' : 'lab.cannot', { solid }),
        whyNotSentences(answer.why, soughtOf(task), lab).join(' '),
        ...sidesText(answer.why, task, lab).map((line) => `  ${line}`),
        ...offerTexts(task, answer.why, lab),
      ];
    }
    case 'possible':
      return [
        ...answer.rules.flatMap((rule, k) => [
          say('fair.rule', {
            number: k + 1,
            rule: words.capital(pointsRuleText(task.data.rows, rule.rates, lab)),
            lead: leadText(rule, task.favourite, lab),
          }),
          `   ${scoresText(rule, lab)}`,
        ]),
        say(answer.complete ? 'fair.all-told' : 'fair.maybe-more'),
      ];
  }
}

function offerTexts(task: FavourTask, why: WhyNot, lab: TerminalLab): readonly string[] {
  const { further, say } = lab;
  const tried = offers(task, further, WORK);
  if (tried.status === 'not-settled') return [];
  if (tried.offers.length === 0) {
    // Larger points would help, which is told already, or nothing is left that might.
    const hasHelp = why.code === 'lead-out-of-reach' || (task.negative && further.rows.length === 0);
    return hasHelp ? [] : [say('lab.offer-none')];
  }
  const texts = tried.offers.map((offer) => `  ${offerText(offer, task.favourite, lab)}`);
  return [`${say('lab.offers')}:`, ...texts, `  ${say('fair.offer-tried')}`];
}

function offerText({ rows, negative, task, rule }: Offer, favourite: string, lab: TerminalLab): string {
  const { inClass, words, say } = lab;
  const names = words.listed(rows.map(inClass.label));
  const offer =
    rows.length === 0
      ? say('lab.offer-negative')
      : say(negative ? 'lab.offer-both' : 'lab.offer-rows', { rows: names });
  return say('fair.offer', {
    offer,
    rule: pointsRuleText(task.data.rows, rule.rates, lab),
    lead: leadText(rule, favourite, lab),
  });
}

/** One line a solid: its smallest points, or why there are none. */
export function everySolidText(lab: TerminalLab): readonly string[] {
  const { kit, options, words, say } = lab;
  const lines = kit.kinds.map(({ id, name }) => {
    const task = favourTask(id, lab);
    const answer = favour(task, { order: 'fewest-rows', rules: 1 }, WORK);
    if (answer.status === 'impossible')
      return say('fair.cannot', { solid: name, why: whyNotSentences(answer.why, soughtOf(task), lab).join(' ') });
    if (answer.status === 'not-settled') {
      return say('fair.cannot', { solid: name, why: say('fair.not-settled', { count: answer.branches }) });
    }
    const rates = answer.rules[0]?.rates ?? [];
    return say('fair.can', { solid: name, rule: pointsRuleText(task.data.rows, rates, lab) });
  });
  return section(say('fair.each', { most: words.counted('points', options.most) }), lines);
}

const soughtOf = (task: FavourTask) => ({ ...task, rows: task.data.rows });
