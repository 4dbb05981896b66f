import { expect, it } from 'vitest';
import { readingDoubt } from './reading-doubt.ts';

it('8.1 cm and 81 cm are too far apart to be two readings of one tower', () => {
  expect(readingDoubt([81, 810], 80)).toEqual({ about: 'apart', gapMm: 729 });
});

it('readers who differ by 8 mm are not doubted, nor is a tower that sags', () => {
  expect(readingDoubt([321, 329], 320)).toBeNull();
  expect(readingDoubt([300], 350)).toBeNull();
});

it('one reading that is twice what the pieces add up to, or half of it, is doubted', () => {
  expect(readingDoubt([810], 80)).toEqual({ about: 'far', readingMm: 810 });
  expect(readingDoubt([137], 349)).toEqual({ about: 'far', readingMm: 137 });
});

it('nothing is doubted without a reading, nor one reading with nothing drawn', () => {
  expect(readingDoubt([], 350)).toBeNull();
  expect(readingDoubt([810], null)).toBeNull();
});
