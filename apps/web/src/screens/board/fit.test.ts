import { describe, expect, it } from 'vitest';
import { fitOf, isDense } from './fit.ts';

describe('what fits into a window', () => {
  it('twelve rows on a projector of 1920 x 1080, eight at 1366 x 768, never fewer than six', () => {
    expect(fitOf(1920, 1080).most).toBe(12);
    expect(fitOf(1366, 768).most).toBe(8);
    expect(fitOf(1366, 620).most).toBe(6);
    expect(fitOf(3840, 2160).most).toBe(12);
  });

  it('six rows leave room for marks on their lines; twelve do not', () => {
    expect(isDense(6, fitOf(1366, 768))).toBe(false);
    expect(isDense(8, fitOf(1366, 768))).toBe(true);
    expect(isDense(6, fitOf(1920, 1080))).toBe(false);
    expect(isDense(12, fitOf(1920, 1080))).toBe(true);
  });

  it('where rows are stacked the page scrolls, and marks have their own line', () => {
    expect(fitOf(320, 640).most).toBe(12);
    expect(isDense(12, fitOf(320, 640))).toBe(false);
  });
});
