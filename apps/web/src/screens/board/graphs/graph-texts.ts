// How the values of a graph are told: as the Board tells them, and the scale that they stand on.

import { POINTS_ID } from '@cairnmark/engine';
import type { TalkWords, Words } from '@cairnmark/words';
import type { BoardLine } from '../lines.ts';
import type { Scene } from '../scene.ts';
import { groupName } from '../scene.ts';
import { keyText } from '../texts.ts';
import { finestDivisionMm } from './graph-choice.ts';
import { unitOfFirst } from './graph-data.ts';
import type { ScaleOf } from './plot-scale.ts';

/** "34.9 cm", "12 points": the value that the ranking asks for first. */
export function valueText(line: BoardLine, scene: Scene): string {
  const { first } = scene.challenge.ranking;
  const text = keyText(line, first, 0, scene) ?? scene.screen.say('board.no-value');
  return first.by === POINTS_ID ? scene.words.counted('points', Number(line.standing.decidedBy[0]?.value ?? 0)) : text;
}

/** A value of the same measure in the unit that is shown. */
export function amountText(shown: number, scene: Scene): string {
  const { by, roundTo } = scene.challenge.ranking.first;
  if (by === POINTS_ID) return scene.words.counted('points', shown);
  const value = shown * unitOfFirst(scene).size;
  return roundTo > 0 && Math.abs(value / roundTo - Math.round(value / roundTo)) < WHOLE
    ? scene.inClass.roundedAmount(by, value, roundTo)
    : scene.inClass.exactAmount(by, value);
}

/** All names, and where that is too long the first and how many more. */
export function namesTexts(names: readonly string[], { words }: Scene, say: TalkWords['say']): readonly string[] {
  const [first = ''] = names;
  const listed = words.listed(names);
  return names.length < 2 ? [listed] : [listed, say('graphs.short-names', { first, more: names.length - 1 })];
}

/** The number alone, where the unit stands elsewhere or there is no room. */
export const bare = (value: string): string => value.replace(/\s[^\d\s]+$/u, '');

/** No unit: what is left of a whole number of steps after arithmetic in doubles. */
const WHOLE = 1e-6;

export const nameOf = ({ group }: Pick<BoardLine, 'group'>, { record }: Scene): string => groupName(record, group);

/** A number of an axis. It takes one value alone: whoever draws hands a place in the row along, which is no number of decimals. */
export const axisNumber =
  (words: Pick<Words, 'number'>) =>
  (value: number): string =>
    words.number(value);

/** A number of an axis with `least` decimals, as the others of the axis have them. */
export const evenNumber =
  (words: Pick<Words, 'number'>) =>
  (value: number, least: number): string =>
    words.number(value, least);

/** The scale for the values of a measure: a length is divided as the ruler is, as far as the grade reads it. */
export function scaleFor(measure: string, { challenge, inClass, ruler }: Scene): ScaleOf {
  if (measure === POINTS_ID) return { inches: false, finest: 0, leastStep: 1 };
  const { name, size } = inClass.unit(measure);
  if (name === 'cm' || name === 'in' || name === 'mm') {
    return { inches: name === 'in', finest: finestDivisionMm(ruler, challenge.gradePreset) / size, leastStep: 1 };
  }
  return name === '' ? { inches: false, finest: 1, leastStep: 1 } : { inches: false, finest: 0, leastStep: 0 };
}
