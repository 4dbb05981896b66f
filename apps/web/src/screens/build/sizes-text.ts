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
  if (crossed.length > 0 && crossed.every(Number.isFinite)) return crossedText(crossed, inClass);
  const names: Readonly<Record<string, string>> = words.names.sizes;
  return Object.entries(sizes)
    .filter(([name]) => name !== 'sides')
    .map(([name, value]) => `${names[name] ?? name} ${inClass.exact(value, 'mm')}`)
    .join(', ');
}

/** The unit stands once, behind the last. */
function crossedText(lengthsMm: readonly number[], inClass: BuildWords['inClass']): string {
  const texts = lengthsMm.map((lengthMm) => inClass.exact(lengthMm, 'mm'));
  return texts.map((text, k) => (k < texts.length - 1 ? text.replace(/\s*[a-z]+$/, '') : text)).join(' × ');
}
