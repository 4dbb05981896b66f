// How much room writing takes, mm. No kerning: the sheets are written without it.

import type { Font } from '../page/page.ts';
import { widthOf } from './widths.ts';
import { charactersOf, winAnsiCode } from './win-ansi.ts';

/** How writing looks; the size is that of the font. */
export interface Type {
  readonly font: Font;
  readonly sizeMm: number;
}

/** No unit (of the font size). From one line to the next: accents of capitals and the tails of g stay apart. */
export const LINE_SHARE = 1.25;

/** No unit (of the font size). From the top of a line to where its letters stand: Å is 0.962 high (FontBBox of Helvetica-Bold.afm). */
export const RISE_SHARE = 0.98;

/** Length of a line of writing. Throws RangeError for a character that a sheet cannot hold: ask `foreignIn` before. */
export function textWidthMm(text: string, { font, sizeMm }: Type): number {
  return charactersOf(text).reduce((sum, character) => {
    const code = winAnsiCode(character);
    if (code === undefined) throw new RangeError(`a sheet cannot hold ${character}`);
    return sum + widthOf(code, font) * sizeMm;
  }, 0);
}
