// What stands on a page, as operators of PDF (ISO 32000-1, chapters 8 and 9). The unit is set to 1 mm, the frame is that
// of the page.

import type { Vec2 } from '@cairnmark/geometry';
import { MM_PER_INCH } from '@cairnmark/geometry';
import type { Path, PathStep } from '@cairnmark/nets';
import type { Align, Fill, Font, Mark, Stroke, Writing } from '../page/page.ts';
import { textWidthMm } from '../text/measure.ts';
import { charactersOf, winAnsiCode } from '../text/win-ansi.ts';
import { numberText } from './number.ts';

/** No unit. Points in a mm. */
export const POINTS_PER_MM = 72 / MM_PER_INCH;

/** How the fonts are called in the operators. */
export const FONT_NAMES: Readonly<Record<Font, string>> = { regular: 'F1', bold: 'F2' };

/** The operators that draw the marks, in ASCII. Throws RangeError for a character that a sheet cannot hold. */
export const contentOf = (marks: readonly Mark[]): string =>
  [`${SCALE} 0 0 ${SCALE} 0 0 cm`, ROUND_CORNERS, ...marks.map(operatorsOf)].join('\n');

const SCALE = POINTS_PER_MM.toFixed(9);
const ROUND_CORNERS = '1 j';

function operatorsOf(mark: Mark): string {
  switch (mark.kind) {
    case 'stroke':
      return strokeOf(mark);
    case 'fill':
      return fillOf(mark);
    case 'writing':
      return writingOf(mark);
  }
}

const strokeOf = ({ path, widthMm, grey, dashMm }: Stroke): string =>
  `${numbers(grey)} G ${numbers(widthMm)} w [${numbers(...dashMm)}] 0 d ${pathOf(path)} S`;

const fillOf = ({ paths, grey }: Fill): string => `${numbers(grey)} g ${paths.map(pathOf).join(' ')} f`;

function pathOf({ start, steps, closed }: Path): string {
  return [`${numbers(...start)} m`, ...steps.map(stepOf), ...(closed ? ['h'] : [])].join(' ');
}

const stepOf = (step: PathStep): string =>
  step.kind === 'line' ? `${numbers(...step.to)} l` : `${numbers(...step.c1, ...step.c2, ...step.to)} c`;

function writingOf(writing: Writing): string {
  const { text, at, align, font, sizeMm, turnRad, grey } = writing;
  const along: Vec2 = [Math.cos(turnRad), Math.sin(turnRad)];
  const backMm = BEFORE[align] * textWidthMm(text, { font, sizeMm });
  const start: Vec2 = [at[0] - along[0] * backMm, at[1] - along[1] * backMm];
  const frame = numbers(along[0], along[1], -along[1], along[0], ...start);
  const letters = [`/${FONT_NAMES[font]} ${numbers(sizeMm)} Tf`, `${frame} Tm`, `(${encoded(text)}) Tj`];
  return ['BT', `${numbers(grey)} g`, ...letters, 'ET'].join(' ');
}

/** The share of the writing that stands before `at`. */
const BEFORE: Readonly<Record<Align, number>> = { left: 0, middle: 0.5, right: 1 };

/** A text between brackets, ASCII as it is and the rest as octal numbers. */
const encoded = (text: string): string =>
  charactersOf(text)
    .map((character) => {
      const code = winAnsiCode(character) ?? 0;
      if (code > 0x7e) return `\\${code.toString(8)}`;
      return '()\\'.includes(character) ? `\\${character}` : character;
    })
    .join('');

const numbers = (...values: readonly number[]): string => values.map(numberText).join(' ');
