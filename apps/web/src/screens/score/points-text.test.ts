import { describe, expect, it } from 'vitest';
import { pointsUnit } from './points-text.ts';

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
