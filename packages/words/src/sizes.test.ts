import type { Ruler, SolidSpec } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { wordsFor } from './at-once.ts';
import { readerWith } from './in-class.ts';

const CUBOID: SolidSpec = { solid: 'rectangular-prism', sizes: { length: 80, width: 50, height: 30 } };
const CM: Ruler = { id: 'mm', unit: 'cm', stepMm: 1 };

const told = (spec: SolidSpec, ruler: Ruler, language: 'en' | 'es' = 'en'): string =>
  wordsFor(language)
    .inClass({ ...readerWith('mm'), ruler })
    .sizes(spec);

it.each([
  [{ solid: 'cube', sizes: { edge: 50 } }, '5 × 5 × 5\u00a0cm'],
  [CUBOID, '8 × 5 × 3\u00a0cm'],
  [{ solid: 'cylinder', sizes: { diameter: 50, height: 80 } }, 'diameter 5, height 8\u00a0cm'],
  [
    { solid: 'regular-frustum', sizes: { edge: 60, height: 50, sides: 4, topEdge: 40 } },
    'edge 6, height 5, top edge 4\u00a0cm',
  ],
] as const)('%j: %s', (spec, text) => {
  expect(told(spec, CM)).toBe(text);
});

it('in inches has the fractions of a ruler, none of them broken over two lines', () => {
  const inches: Ruler = { id: 'sixteenth-inch', unit: 'in', stepMm: 25.4 / 16 };
  expect(told(CUBOID, inches)).toBe('3\u00a01/8 × 1\u00a015/16 × 1\u00a03/16\u00a0in');
});

it('is told in Spanish too', () => {
  expect(told({ solid: 'cone', sizes: { slant: 65, radius: 25 } }, CM, 'es')).toBe('apotema 6,5, radio 2,5\u00a0cm');
});
