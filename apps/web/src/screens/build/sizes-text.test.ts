import { demoClass } from '@cairnmark/demo';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { classReader, wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { sizesText } from './sizes-text.ts';

it.each([
  ['cube', '5 × 5 × 5 cm'],
  ['cuboid', '8 × 5 × 3 cm'],
  ['cylinder', 'diameter 5, height 8 cm'],
  ['sq-frustum', 'edge 6, height 5, top edge 4 cm'],
])('a %s: %s', (id, text) => {
  const record = demoClass();
  const [challenge] = record.challenges;
  const kind = challenge?.kit.kinds.find((one) => one.id === id);
  const [group] = record.groups;
  const words = wordsFor('en');
  const ruler = { ...rulerOf('mm'), unit: 'cm' as const };
  const reader = classReader(challenge!, record.groups, { ruler, bands: TILT_BANDS, unitOf: () => 'mm' });
  expect(sizesText(kind!, group!, { words, ruler, inClass: words.inClass(reader) })).toBe(text);
});
