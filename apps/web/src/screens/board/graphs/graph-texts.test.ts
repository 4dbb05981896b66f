import { wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { axisNumber, evenNumber } from './graph-texts.ts';

it('the numbers of an axis have no more decimals the further they stand along it', () => {
  expect([32, 33, 34.5].map(axisNumber(wordsFor('en')))).toEqual(['32', '33', '34.5']);
  expect(evenNumber(wordsFor('es'))(33, 1)).toBe('33,0');
});
