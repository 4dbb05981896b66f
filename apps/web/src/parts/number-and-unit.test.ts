import { expect, it } from 'vitest';
import { numberAndUnit } from './number-and-unit.ts';

it.each([
  ['45.3 cm', '45.3', 'cm'],
  ['45,3 cm', '45,3', 'cm'],
  ['7 3/8 in', '7 3/8', 'in'],
  ['3/8 in', '3/8', 'in'],
  ['111.68 cm²', '111.68', 'cm²'],
  ['1.24 cm³ per cm²', '1.24', 'cm³ per cm²'],
  ['10.5°', '10.5', '°'],
  ['−3 points', '−3', 'points'],
  ['54', '54', ''],
  ['3.5 of 4', '3.5', 'of 4'],
  ['not measured', 'not measured', ''],
])('%s is a number and a unit', (text, number, unit) => {
  expect(numberAndUnit(text)).toEqual({ number, unit });
});
