// The sizes of a kind of piece in few words: "5 × 5 × 10 cm", "radius 2.5 cm, height 9 cm".

import type { Group, KindOfPiece } from '@cairnmark/engine';
import type { Sizes, SolidId } from '@cairnmark/geometry';
import type { BuildWords } from '../../app/use-build-words.ts';

/** Solids whose three sizes everybody writes with a cross. */
const CROSSED: Readonly<Partial<Record<SolidId, readonly string[]>>> = {
  cube: ['edge', 'edge', 'edge'],
  'rectangular-prism': ['length', 'width', 'height'],
};

export function sizesText({ id, solid }: KindOfPiece, { measured }: Group, { words, inClass }: BuildWords): string {
  const sizes: Sizes = measured[id] ?? solid.sizes;
  const crossed = CROSSED[solid.solid]?.map((name) => sizes[name] ?? Number.NaN) ?? [];
  if (crossed.length > 0 && crossed.every(Number.isFinite)) return unitOnce(crossed.map(lengthBy(inClass))).join(' × ');
  const names: Readonly<Record<string, string>> = words.names.sizes;
  const lengths = Object.entries(sizes).filter(([name]) => name !== 'sides');
  const texts = unitOnce(lengths.map(([, lengthMm]) => lengthBy(inClass)(lengthMm)));
  return lengths.map(([name], k) => `${names[name] ?? name} ${texts[k]}`).join(', ');
}

const lengthBy =
  (inClass: BuildWords['inClass']) =>
  (lengthMm: number): string =>
    inClass.exact(lengthMm, 'mm');

/** The unit stands behind the last alone. */
const unitOnce = (texts: readonly string[]): readonly string[] =>
  texts.map((text, k) => (k < texts.length - 1 ? text.replace(/\s*[a-z]+$/, '') : text));
