import { demoClass } from '@cairnmark/demo';
import type { Ruler } from '@cairnmark/geometry';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { classReader, wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { sizesText } from './sizes-text.ts';

it.each([
  ['cube', '5 × 5 × 5\u00a0cm'],
  ['cuboid', '8 × 5 × 3\u00a0cm'],
  ['cylinder', 'diameter 5, height 8\u00a0cm'],
  ['sq-frustum', 'edge 6, height 5, top edge 4\u00a0cm'],
])('a %s: %s', (id, text) => {
  expect(told(id, { ...rulerOf('mm'), unit: 'cm' })).toBe(text);
});

it('in inches has the fractions of a ruler, none of them broken over two lines', () => {
  expect(told('cuboid', rulerOf('sixteenth-inch'))).toBe('3\u00a01/8 × 1\u00a015/16 × 1\u00a03/16\u00a0in');
});

function told(id: string, ruler: Ruler): string {
  const record = demoClass();
  const [challenge] = record.challenges;
  const kind = challenge?.kit.kinds.find((one) => one.id === id);
  const [group] = record.groups;
  const words = wordsFor('en');
  const reader = classReader(challenge!, record.groups, { ruler, bands: TILT_BANDS, unitOf: () => 'mm' });
  return sizesText(kind!, group!, { words, ruler, inClass: words.inClass(reader) });
}
