// The small generators that records are made of. Lengths in mm.

import fc from 'fast-check';

/** A number without a minus in front of its zero: JSON has none either. */
export const number = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);
export const sizeMm = number(10, 300);
export const id = fc.stringMatching(/^[a-z0-9]{1,9}(-[a-z0-9]{1,9})?$/).filter((text) => text !== 'constructor');
export const text = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .filter((line) => !/\p{Cc}/u.test(line));
export const instant = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());
export const points = number(-100, 100);
export const seconds = number(0, 600);
export const listOf = <T>(item: fc.Arbitrary<T>) => fc.array(item, { maxLength: 4 });
export const named = <T extends { readonly id: string }>(item: fc.Arbitrary<T>, minLength = 0) =>
  fc.uniqueArray(item, { selector: (one) => one.id, minLength, maxLength: 4 });
/** `record` with every key but those of `optional` always there. */
export const optional = <T extends object>(record: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(record, { requiredKeys: [] });
