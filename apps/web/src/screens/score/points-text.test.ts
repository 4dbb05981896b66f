import { wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { apartText, pointsUnit } from './points-text.ts';

describe('what stands below a total', () => {
  it('is one point, several points, or no result, which is not 0 points', () => {
    expect([1, -1, 0, 2.5, null].map(pointsUnit)).toEqual([
      'score-card.point',
      'score-card.point',
      'score-card.points',
      'score-card.points',
      'score-card.no-total',
    ]);
  });
});

describe('how far two totals are apart', () => {
  it('is not rounded to the decimals of the card when the try before had half a point', () => {
    expect(apartText(1.5, 0, wordsFor('en'))).toBe('1.5');
    expect(apartText(-2, 1, wordsFor('en'))).toBe('2.0');
  });
});
