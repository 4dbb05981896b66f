import { demoClass } from '@cairnmark/demo';
import type { Ruler } from '@cairnmark/geometry';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { classReader, wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { pieceHeight } from './piece-height.ts';

it.each<[Ruler, string, string]>([
  // A cube of 48 mm was told as 5.0 cm beside its edge of 4.8 cm, and the pieces of a list did not add up to their tower.
  [{ ...rulerOf('half-cm'), unit: 'cm' }, '4.8 cm', '10.0 cm'],
  [{ ...rulerOf('mm'), unit: 'cm' }, '4.8 cm', '10.0 cm'],
  [rulerOf('quarter-inch'), '1 7/8 in', '3 15/16 in'],
])('a piece is told finer than a tower is read (%#)', (ruler, cube, cuboid) => {
  const { challenges, groups } = demoClass();
  const reader = classReader(challenges[0]!, groups, { ruler, bands: TILT_BANDS, unitOf: () => 'mm' });
  const inClass = wordsFor('en').inClass(reader);
  expect([pieceHeight(48, { inClass, ruler }), pieceHeight(100, { inClass, ruler })]).toEqual([cube, cuboid]);
});
