// Two turned boxes that share part of a side, with a gap or an overlap of up to 0.02 mm: no exact arithmetic gives their
// perimeter, a contact tolerance does. Expected: P = P1 + P2 - 2 x shared, and one part.

import { expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { alongASide } from '../../../../tests/reference/outline-families.ts';
import { perimeterOf } from '../../../../tests/reference/outline-shapes.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import { unionFacts } from './union-facts.ts';

const SEED = 20260402;
const CONTACT = { contactMm: CONTACT_MM, gapAllowanceMm: CONTACT_MM };

it(`1 000 pairs with gaps of 0 to 0.02 mm (seed ${SEED})`, () => {
  for (let k = 0; k < 1000; k += 1) {
    const { outlines, shared, gap } = alongASide(diceOf(SEED + k));
    const facts = unionFacts(outlines, CONTACT);
    const expected = perimeterOf(outlines[0]) + perimeterOf(outlines[1]) - 2 * shared;
    // Nothing but the rounding of turned corners: a dozen sums of lengths below 100 mm.
    expectNear(facts.outerPerimeterMm, expected, { absolute: 1e-10 }, `case ${k}, gap ${gap}`);
    expect([facts.parts, facts.holes, facts.gaps.length], `case ${k}, gap ${gap}`).toEqual([1, 0, 0]);
  }
});

it(`1 000 pairs that overlap by 0 to 0.02 mm (seed ${SEED})`, () => {
  for (let k = 0; k < 1000; k += 1) {
    const { outlines, shared, gap } = alongASide(diceOf(SEED + k), -1);
    const facts = unionFacts(outlines, CONTACT);
    const expected = perimeterOf(outlines[0]) + perimeterOf(outlines[1]) - 2 * shared;
    // Sides that run into the other box lose the depth of the overlap: four of them at most.
    expectNear(facts.outerPerimeterMm, expected, { absolute: 4 * Math.abs(gap) + 1e-10 }, `case ${k}, overlap ${gap}`);
    expect([facts.parts, facts.holes], `case ${k}, overlap ${gap}`).toEqual([1, 0]);
  }
});

it(`1 000 pairs that are not quite parallel (seed ${SEED})`, () => {
  for (let k = 0; k < 1000; k += 1) {
    const dice = diceOf(SEED + k);
    const lean = dice.between(-1, 1) * 2e-4;
    const { outlines, shared } = alongASide(dice, 1, lean);
    const facts = unionFacts(outlines, CONTACT);
    const expected = perimeterOf(outlines[0]) + perimeterOf(outlines[1]) - 2 * shared;
    // The leaning side is longer by less than a millionth of itself, and its ends move by less than a contact.
    expectNear(facts.outerPerimeterMm, expected, { absolute: 4 * CONTACT_MM }, `case ${k}, lean ${lean}`);
    expect([facts.parts, facts.holes], `case ${k}`).toEqual([1, 0]);
  }
});
