// Text in lines of at most a width, in smaller letters where a word would not fit otherwise. mm.

import type { Type } from './measure.ts';
import { textWidthMm } from './measure.ts';

export interface Wrapped extends Type {
  readonly lines: readonly string[];
}

/** A word that does not fit even in the smallest letters, and the width that it needs in them. */
export interface TooWide {
  readonly word: string;
  readonly neededMm: number;
}

/**
 * Parted at spaces, and at every line feed. A word that is too long for the width makes all of the text smaller, in steps,
 * down to `leastMm`. Throws RangeError for a character that a sheet cannot hold.
 */
export function wrap(text: string, type: Type, widthMm: number, leastMm: number): Wrapped | TooWide {
  const word = longestWord(text, type);
  const needed = (sizeMm: number): number => textWidthMm(word, { ...type, sizeMm });
  let { sizeMm } = type;
  while (needed(sizeMm) > widthMm + ROUNDING_MM) {
    if (sizeMm <= leastMm) return { word, neededMm: needed(sizeMm) };
    sizeMm = Math.max(leastMm, sizeMm - STEP_MM);
  }
  const fitting = { ...type, sizeMm };
  return { ...fitting, lines: text.split('\n').flatMap((line) => linesOf(line, fitting, widthMm)) };
}

/** mm. Sums of widths are off by less, and nobody sees it. */
const ROUNDING_MM = 1e-6;

/** mm. Half a point or so: the eye hardly sees a smaller step. */
const STEP_MM = 0.2;

function longestWord(text: string, type: Type): string {
  const words = text.split(/[ \n]+/).map((word) => ({ word, mm: textWidthMm(word, type) }));
  return words.reduce((longest, one) => (one.mm > longest.mm ? one : longest), { word: '', mm: 0 }).word;
}

function linesOf(text: string, type: Type, widthMm: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || textWidthMm(longer, type) <= widthMm + ROUNDING_MM) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}
