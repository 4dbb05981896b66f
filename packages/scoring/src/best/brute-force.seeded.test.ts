// The search against trying every order of pieces and every way up (tests/reference/lab/best-brute-force.ts, which shares
// nothing with it): 600 seeded kits, half of them with pieces beside, frictions, points and kinds that must be used.

import { describe, expect, it } from 'vitest';
import { compared } from '../../../../tests/reference/lab/best-tried.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';

const KITS = share(600, 200);
const FRESH = share(300, 30);

describe('[B1] the best build against trying everything', () => {
  it(`agrees on ${KITS} kits, seeds 1 to ${KITS}`, () => {
    const all = Array.from({ length: KITS }, (_, k) => compared(k + 1));
    expect(all.flatMap(({ agree }, k) => (agree ? [] : [k + 1]))).toEqual([]);
    // Every kind of answer is among them.
    for (const outcome of ['any', 'centred', 'none'])
      expect(all.filter((one) => one.outcome === outcome)).not.toEqual([]);
  });

  it.each([
    ['points for ground that pieces beside take', 1114866124],
    ['the same, with two ways of lying beside', 1910347682],
  ])('agrees where it once did not: %s', (_, seed) => {
    expect(compared(seed).agree).toBe(true);
  });

  it(`agrees on ${FRESH} fresh kits`, () => {
    const first = freshSeed('best build');
    const wrong = Array.from({ length: FRESH }, (_, k) => first + k).filter((seed) => !compared(seed).agree);
    expect(wrong).toEqual([]);
  });
});
