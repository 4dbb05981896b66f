// What a page of nets says above its foot: how the lines look, which side ends inside, and the caution.

import type { PrintWords } from '@cairnmark/words';
import { MARGIN_MM } from '../frame/frame.ts';
import type { Mark, Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { segment } from '../page/shapes.ts';
import type { Type } from '../text/measure.ts';
import { textWidthMm } from '../text/measure.ts';
import type { Fitted } from './fitted.ts';
import { cutLine, foldLine } from './lines.ts';

/** For a page with these nets on it; between the foot and the nets, as wide as they have room. */
export function footNote(nets: readonly Fitted[], widthMm: number, words: PrintWords): readonly Mark[] {
  const hints = [
    ...(nets.some(({ parted }) => parted.length > 0) ? [words.say('print.net-letters')] : []),
    ...(nets.some(({ net }) => net.tooSmallTabs) ? [words.say('print.net-tape')] : []),
    words.say('print.net-caution'),
  ].join(' ');
  const [cut, fold] = [words.say('print.net-cut'), words.say('print.net-fold')];
  const type = typeFor([cut, fold, hints].join(''), widthMm - 2 * (SAMPLE_MM + SPACE_MM) - 2 * APART_MM);
  const cutX = MARGIN_MM + SAMPLE_MM + SPACE_MM;
  const foldX = cutX + textWidthMm(cut, type) + APART_MM;
  const foldTextX = foldX + SAMPLE_MM + SPACE_MM;
  const level = LINE_MM + X_HEIGHT_SHARE * type.sizeMm;
  return [
    cutLine(segment([MARGIN_MM, level], [MARGIN_MM + SAMPLE_MM, level])),
    written(cut, cutX, 'left', type),
    foldLine(segment([foldX, level], [foldX + SAMPLE_MM, level])),
    written(fold, foldTextX, 'left', type),
    written(hints, MARGIN_MM + widthMm, 'right', type),
  ];
}

/** mm from the lower edge of the paper: above the name of the sheet, below the nets. */
const LINE_MM = 19.4;

/** mm. A whole number of dashes, what stands between it and its word, and between two things. */
const SAMPLE_MM = 9;
const SPACE_MM = 1.2;
const APART_MM = 4;

/** mm of font size. */
const MOST_MM = 2.7;

/** No unit (of the font size). Half the height of small letters. */
const X_HEIGHT_SHARE = 0.26;

/** Smaller where the words of a language need it. */
function typeFor(text: string, roomMm: number): Type {
  const type: Type = { font: 'regular', sizeMm: MOST_MM };
  return { ...type, sizeMm: Math.min(MOST_MM, (MOST_MM * roomMm) / textWidthMm(text, type)) };
}

const written = (text: string, x: number, align: Writing['align'], type: Type): Writing => ({
  kind: 'writing',
  text,
  at: [x, LINE_MM],
  align,
  ...type,
  turnRad: 0,
  grey: BLACK,
});
