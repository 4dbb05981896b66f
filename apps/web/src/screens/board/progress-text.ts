// A group's progress in a sentence or two.

import { POINTS_ID } from '@cairnmark/engine';
import { toleranceOf } from './columns.ts';
import type { Progress, Try } from './progress.ts';
import type { Scene } from './scene.ts';

export function progressText({ tries, best, before, areNear }: Progress, scene: Scene): string {
  const { screen } = scene;
  if (best === null) return screen.say('board.own-none');
  const value = tryValue(best, scene);
  if (tries.length === 1) return screen.say('board.own-one', { value });
  const number = tries.indexOf(best) + 1;
  if (before === null) {
    return number === 1 ? screen.say('board.own-first', { value }) : screen.say('board.own-only', { number, value });
  }
  const better = screen.say('board.own-better', { number, value, before: tryValue(before, scene) });
  return areNear ? `${better} ${screen.say('board.own-within')}` : better;
}

export function tryText(one: Try, number: number, scene: Scene): string {
  const { screen, inClass, challenge } = scene;
  if (one.out.length === 0) return screen.say('board.try-value', { number, value: tryValue(one, scene) });
  return screen.say('board.try-out', { number, reason: inClass.out(one.out, one.report, challenge.requirements) });
}

/** As the board shows it: rounded as the ranking rounds, else as it is read. */
function tryValue({ report, value }: Try, { challenge, inClass, words, screen }: Scene): string {
  const { by, roundTo } = challenge.ranking.first;
  if (value === null) return screen.say('board.no-value');
  if (by === POINTS_ID) return words.counted('points', value);
  return roundTo > 0 ? inClass.roundedAmount(by, value, roundTo) : inClass.amount(by, value, toleranceOf(report, by));
}
