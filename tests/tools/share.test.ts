import { afterEach, expect, it, vi } from 'vitest';
import { inTurn } from './share.ts';

const ITEMS = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];

afterEach(() => vi.unstubAllEnvs());

it('an ordinary run takes every third, and runs of other seeds take the others', () => {
  vi.stubEnv('CAIRNMARK_LONG', '0');
  const taken = ['101', '102', '103'].map((seed) => {
    vi.stubEnv('CAIRNMARK_SEED', seed);
    return inTurn(ITEMS, 3, 'letters');
  });
  expect(taken.flat().sort()).toEqual(ITEMS);
  expect(Math.max(...taken.map((some) => some.length))).toBe(3);
});

it('the long run takes all of them', () => {
  vi.stubEnv('CAIRNMARK_LONG', '1');
  vi.stubEnv('CAIRNMARK_SEED', '101');
  expect(inTurn(ITEMS, 3, 'letters')).toEqual(ITEMS);
});

it('of fewer than it goes round by, one is taken', () => {
  vi.stubEnv('CAIRNMARK_LONG', '0');
  vi.stubEnv('CAIRNMARK_SEED', '101');
  expect(inTurn(['a', 'b'], 5, 'letters')).toHaveLength(1);
});
