import { expect, it } from 'vitest';
import { errorOfDifferenceMm } from './error-of-difference.ts';

it('3 mm a reading is told as 5 mm between two, and a coarse ruler as no less than it leaves open', () => {
  // 3 times the root of 2 is 4.24.
  expect(errorOfDifferenceMm({ measuringErrorMm: 3, ruler: 'mm' })).toBe(5);
  // 2 x 10 / root of 12 is 5.77 a reading; times the root of 2, 8.16.
  expect(errorOfDifferenceMm({ measuringErrorMm: 3, ruler: 'cm' })).toBe(9);
  expect(errorOfDifferenceMm({ measuringErrorMm: 0, ruler: 'mm' })).toBe(1);
});
