// The foot of a page: the name of the sheet, what to do with the bars, the number of the page; below them the bars.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { failure, MM_PER_INCH, success } from '@cairnmark/geometry';
import type { PrintWords } from '@cairnmark/words';
import type { PrintIssue } from '../issue.ts';
import type { Align, Mark, Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { segment, solidLine } from '../page/shapes.ts';
import type { Type } from '../text/measure.ts';
import { textWidthMm } from '../text/measure.ts';

/** mm. What the bars measure when a page is printed to scale, from the middle of one end to the middle of the other. */
export const BAR_MM = 100;
export const INCH_BAR_MM = 2 * MM_PER_INCH;

/** The strip that the foot stands in, by its lower left corner; 14 mm high. */
interface Strip {
  readonly cornerMm: Vec2;
  readonly widthMm: number;
}

export function footOf(name: string, page: string, words: PrintWords, strip: Strip): Result<Mark[], PrintIssue> {
  const [left, bottom] = strip.cornerMm;
  const right = left + strip.widthMm;
  const hint = words.say('print.scale');
  const pageMm = textWidthMm(page, SMALL);
  const hintRight = right - pageMm - APART_MM;
  const roomMm = hintRight - textWidthMm(hint, SMALL) - APART_MM - left;
  const neededMm = textWidthMm(name, NAME);
  if (neededMm > roomMm) {
    return failure([{ code: 'text-too-wide', path: ['name'], details: { text: name, neededMm, roomMm } }]);
  }
  const line = bottom + TEXT_MM;
  return success([
    written(name, [left, line], 'left', NAME),
    written(hint, [hintRight, line], 'right', SMALL),
    written(page, [right, line], 'right', SMALL),
    ...barsOf(words, strip.cornerMm),
  ]);
}

const SMALL: Type = { font: 'regular', sizeMm: 2.8 };
const NAME: Type = { font: 'bold', sizeMm: 3.2 };

/** mm. Between two things on one line. */
const APART_MM = 5;

/** mm. Above the margin: the line of writing, and the bars. */
const TEXT_MM = 4.9;
const BARS_MM = 1.65;

/** mm. The bars with the marks at their ends: as thin as a line of a ruler. */
const BAR_LINE_MM = 0.25;
const BAR_END_MM = 3;

function barsOf(words: PrintWords, [left, bottom]: Vec2): readonly Mark[] {
  const label = words.say('print.bar-mm');
  const inchLeft = left + BAR_MM + LABEL_MM + textWidthMm(label, SMALL) + APART_MM;
  return [
    ...barOf([left, bottom + BARS_MM], BAR_MM, label),
    ...barOf([inchLeft, bottom + BARS_MM], INCH_BAR_MM, words.say('print.bar-inch')),
  ];
}

/** mm. From a bar to what it says. */
const LABEL_MM = 1.5;

function barOf([x, y]: Vec2, lengthMm: number, label: string): readonly Mark[] {
  const end = x + lengthMm;
  const upright = (at: number): Mark =>
    solidLine(segment([at, y - BAR_END_MM / 2], [at, y + BAR_END_MM / 2]), BAR_LINE_MM);
  return [
    solidLine(segment([x, y], [end, y]), BAR_LINE_MM),
    upright(x),
    upright(end),
    written(label, [end + LABEL_MM, y - MIDDLE_SHARE * SMALL.sizeMm], 'left', SMALL),
  ];
}

/** No unit (of the font size). From where letters stand up to the middle of a figure. */
const MIDDLE_SHARE = 0.36;

const written = (text: string, at: Vec2, align: Align, type: Type): Writing => ({
  kind: 'writing',
  text,
  at,
  align,
  ...type,
  turnRad: 0,
  grey: BLACK,
});
