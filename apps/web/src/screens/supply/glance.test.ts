import type { SupplyEvent } from '@cairnmark/scoring';
import { expect, it } from 'vitest';
import { challenge } from '../../../../../tests/reference/small-class.ts';
import { allKinds, glance } from './glance.ts';

const stroke = (id: string, group: string, what: SupplyEvent['what'], takenBack = false): SupplyEvent => ({
  id,
  group,
  what,
  takenBack,
});
const GROUPS = ['terns', 'eiders', 'puffins'];
const EVENTS = [
  stroke('a', 'terns', { kind: 'earned', piece: 'slab', count: 2 }),
  stroke('b', 'puffins', { kind: 'earned', piece: 'cube', count: 1 }),
  stroke('c', 'terns', { kind: 'lost', piece: 'slab', count: 1, reason: 'crushed' }),
  stroke('d', 'terns', { kind: 'lost', piece: 'slab', count: 1, reason: 'gone' }, true),
  stroke('e', 'puffins', { kind: 'dropped', piece: 'slab', count: 1 }),
];

it('tells of each kind who has it, what is lost and what is left, which make up the stock', () => {
  // The kit has three slabs and two cubes.
  expect(glance(EVENTS, challenge(), GROUPS)).toEqual([
    { kind: 'slab', has: [1, 0, 0], lost: 1, left: 1, together: 3 },
    { kind: 'cube', has: [0, 0, 1], lost: 0, left: 1, together: 2 },
  ]);
});

it('adds the kinds up', () => {
  expect(allKinds(glance(EVENTS, challenge(), GROUPS), GROUPS)).toEqual({
    has: [1, 0, 1],
    lost: 1,
    left: 2,
    together: 5,
  });
});
