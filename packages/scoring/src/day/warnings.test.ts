import { describe, expect, it } from 'vitest';
import type { DayRule } from '../types.ts';
import type { DayChallenge } from './warnings.ts';
import { dayWarnings } from './warnings.ts';

const SUM: DayRule = { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false };

const challenge = (id: string, units: readonly string[], marks: DayChallenge['marks'] = []): DayChallenge => ({
  challenge: id,
  units,
  marks,
});

const marks = (judge: string, criterion: string, ...groups: readonly string[]) =>
  groups.map((group) => ({ group, judge, criterion }));

describe('points of different units', () => {
  const mixed = [challenge('tall', ['mm']), challenge('wall', ['mm2', 'count', 'mm2']), challenge('yard', ['mm'])];

  it('[D8] are told with the challenges and all their units', () => {
    expect(dayWarnings(SUM, mixed)).toEqual([
      { code: 'points-of-different-units', challenges: ['tall', 'wall', 'yard'], units: ['count', 'mm', 'mm2'] },
    ]);
  });

  it('[D8] the same units in any order and number are no reason', () => {
    const same = [challenge('tall', ['mm', 'count']), challenge('wall', ['count', 'mm', 'mm'])];
    expect(dayWarnings(SUM, same)).toEqual([]);
    expect(dayWarnings(SUM, [challenge('tall', ['mm', 'mm2'])])).toEqual([]);
  });

  it('[D8] a challenge of weight 0 or without a points table adds nothing', () => {
    const rule = { ...SUM, weights: { wall: 0 } };
    expect(dayWarnings(rule, [...mixed, challenge('judged', [])])).toEqual([]);
    expect(dayWarnings({ ...SUM, weights: { wall: 0.5 } }, mixed)).toHaveLength(1);
  });

  it('[D8] places of any points can be added up', () => {
    for (const kind of ['sum-of-place-points', 'mean-place'] as const) {
      expect(dayWarnings({ ...SUM, kind }, mixed)).toEqual([]);
    }
  });

  it('[D4] refuses a negative weight', () => {
    expect(() => dayWarnings({ ...SUM, weights: { wall: -1 } }, mixed)).toThrow(RangeError);
  });
});

describe('judges', () => {
  it('[D9] who marked other groups than the others of their criterion are told, with all of these', () => {
    const wall = challenge(
      'wall',
      ['count'],
      [
        ...marks('Vik', 'idea', 'terns', 'puffins'),
        ...marks('Oda', 'idea', 'puffins', 'eiders', 'terns'),
        ...marks('Lev', 'idea', 'puffins', 'terns'),
        ...marks('Vik', 'craft', 'puffins', 'terns'),
        ...marks('Oda', 'craft', 'terns', 'puffins'),
      ],
    );
    const expected = {
      code: 'judges-of-different-groups',
      challenge: 'wall',
      criterion: 'idea',
      judges: [
        { judge: 'Lev', groups: ['puffins', 'terns'] },
        { judge: 'Oda', groups: ['eiders', 'puffins', 'terns'] },
        { judge: 'Vik', groups: ['puffins', 'terns'] },
      ],
    };
    expect(dayWarnings(SUM, [wall])).toEqual([expected]);
    // Whatever the rule of the day, and also where the challenge is left out of it: its own places come of the marks.
    expect(dayWarnings({ ...SUM, kind: 'mean-place', weights: { wall: 0 } }, [wall])).toEqual([expected]);
  });

  it('[D9] as many groups are not the same groups', () => {
    const wall = challenge('wall', [], [...marks('Vik', 'idea', 'terns'), ...marks('Oda', 'idea', 'puffins')]);
    expect(dayWarnings(SUM, [wall])).toHaveLength(1);
  });

  it('[D9] one judge alone, and judges of different criteria, are not compared', () => {
    const wall = challenge('wall', [], [...marks('Vik', 'idea', 'terns'), ...marks('Oda', 'craft', 'puffins')]);
    expect(dayWarnings(SUM, [wall, challenge('yard', [], marks('Lev', 'idea', 'eiders'))])).toEqual([]);
  });
});
