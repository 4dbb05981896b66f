import type { Requirement, SupplyEvent } from '@cairnmark/scoring';
import { expect, it } from 'vitest';
import { challenge, group } from '../../../../../tests/reference/small-class.ts';
import { stockToBuild } from './stock-to-build.ts';

const RULE = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
const ONLY: Requirement = { id: 'only', kind: 'only-earned', consequence: { kind: 'must' } };
const EVENTS: readonly SupplyEvent[] = [
  { id: 'a', group: 'terns', what: { kind: 'earned', piece: 'slab', count: 2 } },
  { id: 'b', group: 'terns', what: { kind: 'lost', piece: 'slab', count: 1, reason: 'crushed' } },
  { id: 'c', group: 'puffins', what: { kind: 'earned', piece: 'cube', count: 1 } },
];
const of = (requirements: readonly Requirement[], events = EVENTS, name = 'terns') =>
  Object.fromEntries(stockToBuild(challenge({ supply: RULE, requirements }), group(name), events));

it('is what the class has, where nothing has to be earned', () => {
  expect(of([])).toEqual({ slab: 3, cube: 2 });
});

it('is what the group has of its supply, where only that may be built with', () => {
  expect(of([ONLY])).toEqual({ slab: 1, cube: 0 });
  expect(of([ONLY], EVENTS, 'puffins')).toEqual({ slab: 0, cube: 1 });
  expect(of([ONLY], [])).toEqual({ slab: 0, cube: 0 });
});

it('is what the class has, where more than was earned only costs points', () => {
  expect(of([{ ...ONLY, consequence: { kind: 'costs', points: 5 } }])).toEqual({ slab: 3, cube: 2 });
});
