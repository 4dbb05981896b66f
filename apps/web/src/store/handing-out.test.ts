// Crushed pieces are not handed out, however fast somebody taps; the class file itself allows them as before.

import type { ClassRecord } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { challenge, classOf, group } from '../../../../tests/reference/small-class.ts';
import { wholeLeft, withOneEarned } from './handing-out.ts';
import { crushKind } from './kit-changes.ts';
import { eventsOf, withStroke } from './supply-changes.ts';

const RULE = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
/** Three slabs and two cubes. */
const EMPTY: ClassRecord = {
  ...classOf({ challenges: [challenge({ supply: RULE })], attempts: [] }),
  groups: [group('terns')],
};
const AT = { challenge: 'tall', group: 'terns', round: 1, carrier: null };
const leftIn = (record: ClassRecord) => wholeLeft(eventsOf(record, 'tall'), record.challenges[0]!);
const slabs = (record: ClassRecord, taps: number): ClassRecord =>
  Array.from({ length: taps }).reduce<ClassRecord>((now) => withOneEarned(AT, 'slab')(now), record);

it('the class hands out what is whole and then nothing, and what was repaired again', () => {
  const two = crushKind('tall', 'slab', 1)(EMPTY);
  expect(leftIn(two)).toEqual({ slab: 2, cube: 2 });
  const after = slabs(two, 5);
  expect(eventsOf(after, 'tall')).toHaveLength(2);
  expect(leftIn(after)).toEqual({ slab: 0, cube: 2 });
  expect(slabs(crushKind('tall', 'slab', 0)(after), 5).supplies['tall']).toHaveLength(3);
});

it('a file in which crushed pieces were earned is one still, and nothing less than none is left', () => {
  const all = [1, 2, 3].reduce((now) => withStroke(AT, { kind: 'earned', piece: 'slab', count: 1 })(now), EMPTY);
  const crushed = crushKind('tall', 'slab', 2)(all);
  expect(faultsOf('class', crushed)).toEqual([]);
  expect(leftIn(crushed)).toEqual({ slab: 0, cube: 2 });
  expect(withOneEarned(AT, 'slab')(crushed)).toBe(crushed);
});

it('no piece is handed out of a kind or under a challenge that is not there', () => {
  expect(withOneEarned(AT, 'brick')(EMPTY)).toBe(EMPTY);
  expect(withOneEarned({ ...AT, challenge: 'gone' }, 'slab')(EMPTY)).toBe(EMPTY);
});
