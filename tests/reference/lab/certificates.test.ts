// A proof that is none is told from one: the checks of certificates.ts can fail.

import type { FavourTask, WhyNot } from '@cairnmark/scoring';
import { expect, it } from 'vitest';
import { proves, provesNeverEven } from './certificates.ts';
import { exampleData } from './examples.ts';

const task: FavourTask = {
  data: exampleData(['cube', 'sqPyr', 'cone'], ['F', 'E', 'V']),
  favourite: 'cube',
  lead: 3,
  most: 2,
  negative: false,
  step: 1,
};

it('nothing proves that the cube cannot be favoured', () => {
  const none = { atGreatest: null, atNeeded: null } as const;
  const reasons: readonly WhyNot[] = [
    { code: 'zero' },
    { code: 'twin', by: 'cone' },
    { code: 'dominated', by: 'sqPyr' },
    { code: 'dominated', by: 'cube' },
    {
      code: 'mix',
      times: 1,
      others: [{ kind: 'sqPyr', times: 1 }],
      totalOfFavourite: [9, 9, 9],
      totalOfOthers: [9, 9, 9],
    },
    { code: 'mix', times: 0, others: [], totalOfFavourite: [], totalOfOthers: [] },
    {
      code: 'lead-out-of-reach',
      greatestLead: 2,
      maxNeeded: null,
      ...none,
      proof: { noMoreLead: { shares: [1n, 0n] }, noSmallerMost: null },
    },
    {
      code: 'lead-out-of-reach',
      greatestLead: 2,
      maxNeeded: null,
      ...none,
      proof: {
        noMoreLead: { row: 1, upTo: 0, below: { shares: [1n, 0n] }, above: { shares: [1n, 0n] } },
        noSmallerMost: null,
      },
    },
  ];
  for (const why of reasons) expect([why.code, proves(why, task)]).toEqual([why.code, false]);
});

it('cube and sphere against two cylinders is no proof that nothing is even', () => {
  const data = exampleData(['cube', 'cylinder', 'sphere'], ['Ff', 'Cs']);
  const even = { data, goal: 'share', per: 'piece', most: 5, negative: false, step: 1 } as const;
  const side = (kind: string, times: number) => ({ kind, times });
  const proof = { possible: false, totalOfThese: [], totalOfThose: [] } as const;
  const claimed = { ...proof, these: [side('cube', 1), side('sphere', 1)], those: [side('cylinder', 2)] };
  expect(provesNeverEven(claimed, even)).toBe(false);
});
