// The sizes of a kind of piece in few words: "5 × 5 × 10 cm", "radius 2.5 cm, height 9 cm". In inches as a ruler reads them,
// "2 3/8": nobody finds 2.362 in on one.

import type { Group, KindOfPiece } from '@cairnmark/engine';
import type { Sizes, SolidId } from '@cairnmark/geometry';
import type { BuildWords } from '../../app/use-build-words.ts';

/** Solids whose three sizes everybody writes with a cross. */
const CROSSED: Readonly<Partial<Record<SolidId, readonly string[]>>> = {
  cube: ['edge', 'edge', 'edge'],
  'rectangular-prism': ['length', 'width', 'height'],
};

export function sizesText(
  { id, solid }: KindOfPiece,
  { measured }: Group,
  { words, inClass, ruler }: BuildWords,
): string {
  const sizes: Sizes = measured[id] ?? solid.sizes;
  const length = (lengthMm: number): string =>
    unbroken(ruler.unit === 'in' ? inClass.full(lengthMm, 'mm') : inClass.exact(lengthMm, 'mm'));
  const crossed = CROSSED[solid.solid]?.map((name) => sizes[name] ?? Number.NaN) ?? [];
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
