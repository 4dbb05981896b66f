// What the characters are, poppler tells: tests/reference/print/writing.test.ts.

import { expect, it } from 'vitest';
import { charactersOf, foreignIn, winAnsiCode } from './win-ansi.ts';

it('English and Spanish can be printed, other letters and signs of mathematics cannot', () => {
  expect(foreignIn('¿Qué pingüino año «sí»? ¡Ñandú! 3 × 5 cm² ± ½, 100 % – “x” … €')).toEqual([]);
  expect(foreignIn('π → √ − ≤ Łódź π')).toEqual([...'π→√−≤Łź']);
});

it('what is not seen cannot be printed either: control characters, the hyphen that only parts words', () => {
  expect(foreignIn('a\u0007b\u00adc\u007f\u0081\u200b')).toEqual(['\u0007', '\u00ad', '\u007f', '\u0081', '\u200b']);
  expect(winAnsiCode('\u00a0')).toBe(0xa0);
});

it('a letter with its accent apart is the same letter', () => {
  const apart = 'canción'.normalize('NFD');
  expect(apart).toHaveLength(8);
  expect(charactersOf(apart)).toEqual([...'canción']);
  expect(foreignIn(apart)).toEqual([]);
});
