// The points of one build, line by line: what its rows and kept rules earned, what broken rules cost, own results, what
// people gave or took, the sum.

import type { Challenge, Report } from '@cairnmark/engine';
import { unmeasuredLosses } from '@cairnmark/engine';
import type { ClassWords, TerminalWords } from '@cairnmark/words';
import { toleranceOf } from './boards.ts';

/** A challenge, and the words of the class that plays it. */
export interface Scene {
  readonly challenge: Challenge;
  readonly words: ClassWords;
}

export function pointsLines(report: Report, scene: Scene, words: TerminalWords): readonly string[] {
  const total = report.total === null ? words.say(whyNoTotal(report, scene)) : words.counted('points', report.total);
  return [
    ...(countsStatedPoints(report, scene.challenge) ? [] : earnedLines(report, scene)),
    ...fallenLines(report, scene),
    ...report.adjustments.map((adjustment) => scene.words.adjustment(adjustment)),
    words.say('score.total', { total }),
  ];
}

const whyNoTotal = (report: Report, { challenge }: Scene) =>
  unmeasuredLosses(report, challenge).length > 0 ? 'score.not-known' : 'score.no-result';

function earnedLines(report: Report, scene: Scene): readonly string[] {
  return [
    ...report.points.flatMap((line) => {
      const row = scene.challenge.points.find(({ id }) => id === line.row);
      return row === undefined ? [] : [scene.words.points(line, row, toleranceOf(report, row.measure))];
    }),
    ...ruleLines(report, scene, isWorthTelling),
    ...ownLines({ ...report, own: report.own.filter(({ points }) => points !== 0) }, scene),
  ];
}

/** Of a build that fell, stated points may stand in place of all that it earned. */
const countsStatedPoints = ({ state }: Report, { fallen }: Challenge): boolean =>
  state.kind !== 'stood' && fallen.counts === 'points';

/** That the build fell, and what that counts; nothing of one that stood. */
export function fallenLines({ state }: Report, { challenge, words }: Scene): readonly string[] {
  const sentence = words.fallen(state, challenge.fallen);
  return sentence === null ? [] : [sentence];
}

/** What bears on the points or may still do so: a rule that nobody has judged or measured stands open. */
const isWorthTelling = ({ verdict, consequence, note }: Report['requirements'][number]): boolean =>
  note !== null ||
  verdict === 'not-judged' ||
  verdict === 'not-measured' ||
  (verdict === 'broken' && consequence.kind === 'costs') ||
  (verdict === 'kept' && consequence.kind === 'earns');

/** What the group worked out itself, each with how it compares. */
export const ownLines = ({ own }: Report, { challenge, words }: Scene): readonly string[] =>
  own.map((line) => words.own(line, challenge.own.pi));

/** The rules of the challenge as this build kept them: those that `among` lets through. */
export function ruleLines(
  report: Report,
  { challenge, words }: Scene,
  among: (line: Report['requirements'][number]) => boolean,
): readonly string[] {
  return report.requirements.filter(among).flatMap((line) => {
    const rule = challenge.requirements.find(({ id }) => id === line.requirement);
    return rule === undefined ? [] : [words.rule(line, rule, toleranceOf(report, line.measure ?? ''))];
  });
}
