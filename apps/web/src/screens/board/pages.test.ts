import { describe, expect, it } from 'vitest';
import { MOST_ROWS, pagesOf, pageWith } from './pages.ts';

const rows = (count: number): number[] => Array.from({ length: count }, (_, k) => k);
const lengths = (count: number): number[] => pagesOf(rows(count), MOST_ROWS).map((page) => page.length);

describe('pages of a board', () => {
  it('hold at most 12 rows and are as even as can be', () => {
    expect(lengths(6)).toEqual([6]);
    expect(lengths(12)).toEqual([12]);
    expect(lengths(13)).toEqual([7, 6]);
    expect(lengths(24)).toEqual([12, 12]);
    expect(lengths(25)).toEqual([9, 9, 7]);
  });

  it('keep every row once and in its order', () => {
    for (let count = 0; count < 60; count += 1) {
      const pages = pagesOf(rows(count), MOST_ROWS);
      expect(pages.flat()).toEqual(rows(count));
      expect(Math.max(...pages.map((page) => page.length))).toBeLessThanOrEqual(12);
      if (count > 0) expect(pages.every((page) => page.length > 0)).toBe(true);
    }
  });

  it('are one page when there is no row', () => {
    expect(pagesOf([], 12)).toEqual([[]]);
  });

  it('are found by what they hold; the first when none does', () => {
    const pages = pagesOf(rows(24), 12);
    expect(pageWith(pages, (row) => row === 13)).toBe(1);
    expect(pageWith(pages, (row) => row === 99)).toBe(0);
  });
});
