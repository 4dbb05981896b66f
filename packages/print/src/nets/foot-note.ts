// What a page of nets says above its foot: how lines and tabs look, which side ends inside, and the caution. Two rows, in
// letters that young pupils read.

import type { PrintWords } from '@cairnmark/words';
import { MARGIN_MM } from '../frame/frame.ts';
import type { Mark, Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { rectangle, segment } from '../page/shapes.ts';
import type { Type } from '../text/measure.ts';
import { textWidthMm } from '../text/measure.ts';
import type { Fitted } from './fitted.ts';
import { cutLine, foldLine, tabShade } from './lines.ts';

/** For a page with these nets on it; between the foot and the nets, as wide as they have room. */
export function footNote(nets: readonly Fitted[], widthMm: number, words: PrintWords): readonly Mark[] {
  const tape = nets.some(({ net }) => net.tooSmallTabs) ? words.say('print.net-tape') : '';
  const letters = nets.some(({ parted }) => parted.length > 0) ? words.say('print.net-letters') : '';
  const right = MARGIN_MM + widthMm;
  return [
    ...keyOf(nets, words),
    written(tape, right, UPPER_MM, 'right'),
    written(words.say('print.net-caution'), MARGIN_MM, LOWER_MM, 'left'),
    written(letters, right, LOWER_MM, 'right'),
  ].filter((mark) => mark.kind !== 'writing' || mark.text !== '');
}

/** mm from the lower edge of the paper, where letters stand: above the name of the sheet, below the nets. */
const UPPER_MM = 19.6;
const LOWER_MM = 16.2;

/** mm of font size: nine points. */
const TYPE: Type = { font: 'regular', sizeMm: 3.2 };

/** mm. A whole number of dashes, what stands between it and its word, and between two things. */
const SAMPLE_MM = 9;
const SPACE_MM = 1.2;
const APART_MM = 4;

/** mm. From where letters stand to the middle of small ones, and how high a sample of a tab is. */
const MIDDLE_MM = 0.26 * TYPE.sizeMm;
const SHADE_MM = 2.4;

/** One sample beside the other, each with its word. */
function keyOf(nets: readonly Fitted[], words: PrintWords): readonly Mark[] {
  const level = UPPER_MM + MIDDLE_MM;
  const hasTabs = nets.some(({ net }) => net.parts.some(({ tabs }) => tabs.length > 0));
  const samples: readonly { readonly text: string; readonly at: (x: number) => Mark }[] = [
    { text: words.say('print.net-cut'), at: (x) => cutLine(segment([x, level], [x + SAMPLE_MM, level])) },
    { text: words.say('print.net-fold'), at: (x) => foldLine(segment([x, level], [x + SAMPLE_MM, level])) },
    {
      text: hasTabs ? words.say('print.net-tab') : '',
      at: (x) => tabShade(rectangle([x, level - SHADE_MM / 2], SAMPLE_MM, SHADE_MM)),
    },
  ];
  let x = MARGIN_MM;
  return samples
    .filter(({ text }) => text !== '')
    .flatMap(({ text, at }) => {
      const [sample, textX] = [at(x), x + SAMPLE_MM + SPACE_MM];
      x = textX + textWidthMm(text, TYPE) + APART_MM;
      return [sample, written(text, textX, UPPER_MM, 'left')];
    });
}

const written = (text: string, x: number, y: number, align: Writing['align']): Writing => ({
  kind: 'writing',
  text,
  at: [x, y],
  align,
  ...TYPE,
  turnRad: 0,
  grey: BLACK,
});
