// How much a build bears: a tilt of the table, the same as a push sideways, and to which side. Rounded down, so that no
// build is said to bear more than it does. Plan: positive x is right, positive y is back.

import type { Tilt, Vec2 } from '@cairnmark/geometry';
import { fixed } from './numbers.ts';
import { exact } from './quantities.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** "12° (like a push of 21 % of its weight sideways)". */
export function tiltText({ tiltRad, push }: Pick<Tilt, 'tiltRad' | 'push'>, voice: Voice): string {
  return fill(voice.words.stability.tilt, {
    degrees: degreesText(tiltRad, voice),
    percent: roundedDown(100 * push, ' %', voice),
  });
}

/** "12°", "2.9°", "less than 0.1°". */
export const degreesText = (tiltRad: number, voice: Voice): string =>
  roundedDown((180 / Math.PI) * tiltRad, '°', voice);

/** One of eight: "to the back right". */
export const sideText = (direction: Vec2, { words }: Voice): string =>
  words.stability[`side.${SIDES[eighthOf(direction)] ?? 'right'}`];

/** The answer to one side that was asked about; null: there is none. */
export function tiltTowardsSentence(tilt: Tilt | null, voice: Voice): string {
  const { stability } = voice.words;
  if (tilt === null) return stability['towards.unknown'];
  const side = exactSideText(tilt.direction, voice);
  if (tilt.tiltRad <= AT_A_TOUCH_RAD) return fill(stability['towards.nothing'], { side });
  return fill(stability['towards.bears'], { side, tilt: tiltText(tilt, voice) });
}

/** rad. What the sums leave of a margin of none. */
const AT_A_TOUCH_RAD = 1e-7;

/** Counter-clockwise from the right, 45 degrees apart. */
const SIDES = ['right', 'back-right', 'back', 'back-left', 'left', 'front-left', 'front', 'front-right'] as const;
export type SideName = (typeof SIDES)[number];

const EIGHTH_RAD = Math.PI / 4;

const eighthOf = ([x, y]: Vec2): number => (Math.round(Math.atan2(y, x) / EIGHTH_RAD) + SIDES.length) % SIDES.length;

/** rad. A direction this near to one of the eight is called by its name alone: half of a degree, as it is shown. */
const SAME_SIDE_RAD = Math.PI / 360;

/** "to the back right", or with its degrees "to the back right (30° round from the right)". */
function exactSideText(direction: Vec2, voice: Voice): string {
  const [x, y] = direction;
  const turnRad = Math.atan2(y, x);
  const side = sideText(direction, voice);
  if (Math.abs(turnRad - Math.round(turnRad / EIGHTH_RAD) * EIGHTH_RAD) < SAME_SIDE_RAD) return side;
  const degrees = Math.round((180 / Math.PI) * turnRad + 360) % 360;
  const shown = exact((Math.PI / 180) * degrees, 'rad', voice.reader.ruler, voice.words.decimalMark);
  return fill(voice.words.stability['side.at'], { side, degrees: shown });
}

/** Of what is shown: more than the noise of margins (0.00003 degrees), so that 45 is not cut to 44. */
const NOISE = 1e-4;

/** Whole from 10 on, a tenth below: folded paper and a guessed friction are worth no more. */
function roundedDown(value: number, unit: '°' | ' %', { words }: Voice): string {
  const decimals = value + NOISE < 10 ? 1 : 0;
  const steps = Math.floor((value + NOISE) * 10 ** decimals);
  if (steps > 0) return `${fixed(steps / 10 ** decimals, decimals, words.decimalMark)}${unit}`;
  return fill(words.stability.less, { amount: `${fixed(0.1, 1, words.decimalMark)}${unit}` });
}
