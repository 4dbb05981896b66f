import { describe, expect, it } from 'vitest';
import { asName, asReason } from '../../store/plain-text.ts';
import { markedCriteria, markOf } from './marks.ts';

const CRITERIA = [
  { id: 'idea', name: 'Idea' },
  { id: 'craft', name: 'Craft' },
];
const JUDGED = [
  { judge: 'teacher', criterion: 'idea', mark: 3 },
  { judge: 'visitor', criterion: 'idea', mark: 0 },
];

describe('marks of judges', () => {
  it('are averaged by criterion; 0 is a mark, and no mark is none', () => {
    expect(
      markedCriteria(CRITERIA, JUDGED).map(({ criterion, marks, mean }) => [criterion.id, marks.length, mean]),
    ).toEqual([
      ['idea', 2, 1.5],
      ['craft', 0, null],
    ]);
  });

  it('are found by judge and criterion', () => {
    expect(markOf(JUDGED, 'visitor', 'idea')).toBe(0);
    expect(markOf(JUDGED, 'visitor', 'craft')).toBe(null);
    expect(markOf(JUDGED, 'somebody', 'idea')).toBe(null);
  });
});

describe('typed names and reasons', () => {
  it('are trimmed, and hold nothing that a file refuses', () => {
    expect(asName('  Ms\tReed \n')).toBe('Ms Reed');
    expect(asName(' \u0007 ')).toBe('');
    expect(asName('x'.repeat(100))).toBe('x'.repeat(80));
    expect(asReason('y'.repeat(600))).toBe('y'.repeat(500));
  });
});
