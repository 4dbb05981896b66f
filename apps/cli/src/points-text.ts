// The points of one build, row by row: what it earned, what broken rules cost, what people gave or took, the sum.

import type { Challenge, Report } from '@cairnmark/engine';
import type { ClassWords, Words } from '@cairnmark/words';
import { toleranceOf } from './boards.ts';

/** A challenge, and the words of the class that plays it. */
export interface Scene {
  readonly challenge: Challenge;
  readonly words: ClassWords;
}

export function pointsLines(report: Report, scene: Scene, words: Words): readonly string[] {
  const total = report.total === null ? words.say('score.none') : words.counted('points', report.total);
  return [
    ...report.points.flatMap((line) => {
      const row = scene.challenge.points.find(({ id }) => id === line.row);
      return row === undefined ? [] : [scene.words.points(line, row, toleranceOf(report, row.measure))];
    }),
    ...ruleLines(report, scene, ({ verdict, consequence }) => verdict === 'broken' && consequence.kind === 'costs'),
    ...report.adjustments.map((adjustment) => scene.words.adjustment(adjustment)),
    words.say('score.total', { total }),
  ];
}

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
