// The sizes of a solid in few words: "5 × 5 × 10 cm", "radius 2.5 cm, height 9 cm". In inches as a ruler reads them,
// "2 3/8": nobody finds 2.362 in on one.

import type { SolidId, SolidSpec } from '@cairnmark/geometry';
import { exact, inFull } from './quantities.ts';
import type { Voice } from './voice.ts';

/** Solids whose three sizes everybody writes with a cross. */
const CROSSED: Readonly<Partial<Record<SolidId, readonly string[]>>> = {
  cube: ['edge', 'edge', 'edge'],
  'rectangular-prism': ['length', 'width', 'height'],
};

export function sizesText({ solid, sizes }: SolidSpec, voice: Voice): string {
  const { words, reader } = voice;
  const say = reader.ruler.unit === 'in' ? inFull : exact;
  const length = (lengthMm: number): string => unbroken(say(lengthMm, 'mm', reader.ruler, words.decimalMark));
  const crossed = CROSSED[solid]?.map((name) => sizes[name] ?? Number.NaN) ?? [];
  if (crossed.length > 0 && crossed.every(Number.isFinite)) return unitOnce(crossed.map(length)).join(' × ');
  const names: Readonly<Record<string, string>> = words.names.sizes;
  const lengths = Object.entries(sizes).filter(([name]) => name !== 'sides');
  const texts = unitOnce(lengths.map(([, lengthMm]) => length(lengthMm)));
  return lengths.map(([name], k) => `${names[name] ?? name} ${texts[k]}`).join(', ');
}

/** "2 3/4 in" over two lines would be read as 2, and then 3/4. */
const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

/** The unit stands behind the last alone. */
const unitOnce = (texts: readonly string[]): readonly string[] =>
  texts.map((text, k) => (k < texts.length - 1 ? text.replace(/\s*[a-z]+$/, '') : text));
