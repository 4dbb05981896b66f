import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { usesOfKind } from './kind-uses.ts';
import { takeAwayKind } from './kit-changes.ts';
import { challengeOf, unplayed } from './kit-for-tests.ts';

const GAME = { ends: { kind: 'turns', turns: 5 }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
const MUST = { kind: 'must' } as const;

/** The demo, not yet built under, with one challenge changed. */
const withTall = (changes: Partial<Challenge>, more: Partial<ClassRecord> = {}): ClassRecord => {
  const record = unplayed();
  return {
    ...record,
    ...more,
    challenges: record.challenges.map((one) => (one.id === 'tall-light' ? { ...one, ...changes } : one)),
  };
};

it.each([
  [
    'supply',
    withTall(
      { supply: GAME },
      {
        supplies: {
          'tall-light': [{ id: 's', group: 'terns', what: { kind: 'earned', piece: 'octahedron', count: 2 } }],
        },
      },
    ),
  ],
  ['rule', withTall({ requirements: [{ id: 'r', kind: 'only-kinds', kinds: ['octahedron'], consequence: MUST }] })],
  ['points', withTall({ points: [{ id: 'p', measure: 'kind:octahedron', points: 1, per: 1, rounding: 'none' }] })],
  ['ranking', withTall({ ranking: { first: { by: 'kind:octahedron', better: 'more', roundTo: 0 }, tieBreaks: [] } })],
  ['hidden', withTall({ hidden: ['kind:octahedron'] })],
])('a kind that is named by its %s cannot go, and its going would spoil the class', (use, record) => {
  expect(faultsOf('class', record)).toEqual([]);
  for (const at of ['tall-light', 'narrow-rock']) {
    expect(usesOfKind(record, challengeOf(record, at), 'octahedron')).toEqual([{ use, challenge: 'Tall Light' }]);
  }
  expect(usesOfKind(record, challengeOf(record), 'icosahedron')).toEqual([]);
  expect(faultsOf('class', takeAwayKind('tall-light', 'octahedron')(record))).not.toEqual([]);
});

it('the last kind stays', () => {
  const record = unplayed();
  const challenges = record.challenges.map((one) => ({
    ...one,
    kit: { ...one.kit, kinds: one.kit.kinds.slice(0, 1) },
  }));
  const [first] = usesOfKind({ ...record, challenges }, challenges[0]!, 'cube');
  expect(first?.use).toBe('last');
});
