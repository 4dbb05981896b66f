// Two pairs of ticks on the ground sheet, 100 mm and 2 in apart. A bar of 100 mm would run under a marker. mm, about the
// middle of the page.

import type { Vec2 } from '@cairnmark/geometry';
import type { PrintWords } from '@cairnmark/words';
import { BAR_MM, INCH_BAR_MM } from '../frame/foot.ts';
import type { Align, Mark, Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { segment, solidLine } from '../page/shapes.ts';

export const ticks = (words: PrintWords): readonly Mark[] => [
  tick([-BAR_MM / 2, BELOW_MM]),
  tick([BAR_MM / 2, BELOW_MM]),
  written(words.say('print.ground-from'), [-BAR_MM / 2 - BESIDE_MM, BELOW_MM], 'right'),
  written(words.say('print.ground-to'), [BAR_MM / 2 + BESIDE_MM, BELOW_MM], 'left'),
  tick([INCH_MIDDLE_MM - INCH_BAR_MM / 2, -BELOW_MM]),
  tick([INCH_MIDDLE_MM + INCH_BAR_MM / 2, -BELOW_MM]),
  written(words.say('print.bar-inch'), [INCH_MIDDLE_MM, -BELOW_MM], 'middle'),
];

/** mm. The rows of markers above and below; the inches stand between the first two markers. */
const BELOW_MM = -78;
const INCH_MIDDLE_MM = -58;

/** mm. */
const TICK_MM = 6;
const LINE_MM = 0.25;
const BESIDE_MM = 2;
const SIZE_MM = 2.8;

const tick = ([x, y]: Vec2): Mark => solidLine(segment([x, y - TICK_MM / 2], [x, y + TICK_MM / 2]), LINE_MM);

const written = (text: string, [x, y]: Vec2, align: Align): Writing => ({
  kind: 'writing',
  text,
  at: [x, y - 0.36 * SIZE_MM],
  align,
  font: 'regular',
  sizeMm: SIZE_MM,
  turnRad: 0,
  grey: BLACK,
});
