// Numbers come back to the last digit also where one way to write them ends and the next begins.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { bitsIn, bitsOut } from './bits.ts';
import { number } from './numbers.ts';

const seed = freshSeed('numbers of codes');
const column = number('x');

function andBack(value: number): number {
  const out = bitsOut(100);
  column.write(value, out);
  // Behind it stands more, as in a code: a number that is read too long or too short spoils what follows.
  column.write(1.5, out);
  const from = bitsIn(out.bytes());
  const read = column.read(from);
  expect(column.read(from)).toBe(1.5);
  expect(from.isFaulty()).toBe(false);
  return read;
}

it.each([2 ** 31 - 1, 2 ** 31, 2 ** 32 - 2, 2 ** 32 - 1, 2 ** 32, 2 ** 53])(
  '%d comes back, as does each decimal of its digits',
  (digits) => {
    for (let places = 0; places <= 9; places += 1) {
      const value = digits / 10 ** places;
      expect([value, -value].map(andBack)).toEqual([value, -value]);
    }
  },
);

it(`any number comes back (seed ${seed})`, () => {
  const any = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.tuple(fc.integer(), fc.nat(8)).map(([digits, places]) => digits / 10 ** places),
    fc.integer({ min: -600, max: 600 }).map((degrees) => (degrees * Math.PI) / 180),
  );
  fc.assert(
    fc.property(any, (value) => {
      expect(andBack(value)).toBe(value + 0);
    }),
    { seed, numRuns: share(20_000, 2_000), endOnFailure: true },
  );
});
