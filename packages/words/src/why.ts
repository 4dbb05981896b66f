// What separates two builds of one challenge, and what changed between two tries of a group.

import type { Ahead, Challenge, Change, Report, ToldPoints, WhyLine } from '@cairnmark/engine';
import type { Verdict } from '@cairnmark/scoring';
import { amount, amountApart, capital, counted, measureName, roundedAmount } from './amounts.ts';
import { fill } from './say.ts';
import { ruleTitle } from './stated.ts';
import type { Voice } from './voice.ts';

/** One of the two builds, and what it is called: its group, or which try it is. */
export interface Side {
  readonly name: string;
  readonly report: Report;
}

export interface Sides {
  readonly challenge: Challenge;
  readonly first: Side;
  readonly second: Side;
}

/** One sentence a line; one more when the two are level in all that the ranking asks. */
export function whySentences(lines: readonly WhyLine[], sides: Sides, voice: Voice): readonly string[] {
  const keys = lines.filter((line) => line.kind === 'key');
  const points = lines.filter((line) => line.kind !== 'key');
  return [
    ...keys.map((line) => keySentence(line, sides, voice)),
    ...(keys.some(({ ahead }) => ahead !== null) ? [] : [voice.words.why.level]),
    ...points.map((line) => pointsSentence(line, sides, voice)),
  ];
}

/** "Height: 36.1 cm before, 37.9 cm now." */
export function changeSentence({ fact, before, after, error, withinError }: Change, voice: Voice): string {
  const { why } = voice.words;
  const show = (value: number | null, other: number | null): string =>
    value === null ? why['not-measured'] : amountApart(fact, value, other ?? value, error, voice);
  const measure = capital(measureName(fact, voice));
  const sentence = fill(why.change, { measure, before: show(before, after), after: show(after, before) });
  return withinError ? fill(why['within-error'], { sentence }) : sentence;
}

type KeyLine = Extract<WhyLine, { kind: 'key' }>;
type PointsLine = Exclude<WhyLine, { kind: 'key' }>;

function keySentence({ by, first, second, ahead, withinError }: KeyLine, sides: Sides, voice: Voice): string {
  const { why } = voice.words;
  const show = keyAmount(by, sides, voice);
  const text = (value: number | null): string =>
    value === null ? why[by === 'points' ? 'no-points' : 'not-measured'] : show(value);
  const lead = first === null || second === null ? null : show(Math.abs(first - second));
  const what = measureName(by, voice);
  const sentence = comparison(what, [text(first), text(second)], { ahead, lead, isKnown: true }, sides, voice);
  return withinError ? fill(why['within-error'], { sentence }) : sentence;
}

/** As the board shows it: rounded as the ranking rounds, else as it is read. */
function keyAmount(by: string, { challenge, first, second }: Sides, voice: Voice): (value: number) => string {
  const { ranking } = challenge;
  const key = [ranking.first, ...ranking.tieBreaks].find((one) => one.by === by);
  if (key !== undefined && key.roundTo > 0) return (value) => roundedAmount(by, value, key.roundTo, voice);
  const errors = [first, second].map(({ report }) => report.facts.find(({ id }) => id === by)?.tolerance ?? 0);
  return (value) => amount(by, value, Math.max(...errors), voice);
}

function pointsSentence(line: PointsLine, sides: Sides, voice: Voice): string {
  const { words } = voice;
  const points = (value: ToldPoints): string => {
    if (typeof value === 'number') return counted('points', value, words);
    return words.why[value ?? 'no-points'];
  };
  const { first, second } = line;
  const texts = [points(first), points(second)] as const;
  const areNumbers = typeof first === 'number' && typeof second === 'number';
  const lead = areNumbers ? counted('points', Math.abs(first - second), words) : null;
  const isKnown = first !== 'not-known' && second !== 'not-known';
  const by = { ahead: aheadByPoints(first, second), lead, isKnown };
  const what = pointsTitle(line, sides, voice);
  if (line.kind !== 'requirement') return comparison(what, texts, by, sides, voice);
  const counts = (first ?? 0) !== 0 || (second ?? 0) !== 0;
  const told = (verdict: Verdict | null, earned: ToldPoints): string => {
    if (verdict === null) return words.why['no-points'];
    const name = words.names.verdicts[verdict];
    return counts && earned !== null ? fill(words.why['with-points'], { verdict: name, points: points(earned) }) : name;
  };
  const [one, other] = line.verdicts;
  return comparison(what, [told(one, first), told(other, second)], by, sides, voice);
}

/** Nobody is ahead of points that are not known. */
function aheadByPoints(first: ToldPoints, second: ToldPoints): Ahead {
  if (first === second || first === 'not-known' || second === 'not-known') return null;
  return (first ?? Number.NEGATIVE_INFINITY) > (second ?? Number.NEGATIVE_INFINITY) ? 'first' : 'second';
}

function pointsTitle(line: PointsLine, { challenge }: Sides, voice: Voice): string {
  const { why } = voice.words;
  switch (line.kind) {
    case 'row':
      return fill(why.row, { measure: measureName(line.measure, voice) });
    case 'requirement': {
      const rule = challenge.requirements.find(({ id }) => id === line.requirement);
      return fill(why.rule, { rule: rule === undefined ? line.requirement : ruleTitle(rule, voice) });
    }
    case 'own-result':
      return fill(why['own-result'], { measure: measureName(line.measure, voice) });
    case 'fallen':
    case 'adjustments':
    case 'total':
      return why[line.kind];
  }
}

interface Lead {
  readonly ahead: Ahead;
  /** By how much; null when one of the two has no value. */
  readonly lead: string | null;
  /** False where one of the two, or both, are not known: they are not called the same. */
  readonly isKnown: boolean;
}

/** "Height: 379 mm (Puffins), 349 mm (Terns). Ahead: Puffins, by 30 mm." */
function comparison(
  what: string,
  [first, second]: readonly [string, string],
  { ahead, lead, isKnown }: Lead,
  sides: Sides,
  { words: { why } }: Voice,
): string {
  const title = capital(what);
  if (isKnown && ahead === null && first === second) return fill(why.same, { what: title, value: first });
  const sentence = fill(why.differ, {
    what: title,
    first: fill(why.of, { value: first, name: sides.first.name }),
    second: fill(why.of, { value: second, name: sides.second.name }),
  });
  if (ahead === null) return sentence;
  const { name } = sides[ahead];
  return lead === null ? fill(why.ahead, { sentence, name }) : fill(why['ahead-by'], { sentence, name, by: lead });
}
