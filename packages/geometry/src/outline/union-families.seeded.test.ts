// Unions of adversarial outlines against second methods that use no boolean library: an exact arrangement for polygons, a
// slab integral where discs are among them. 16 families, 24 000 cases in the long run; and 208 of a fresh seed in every run.

import { describe, expect, it } from 'vitest';
import { exactUnion } from '../../../../tests/reference/exact-union.ts';
import type { Family } from '../../../../tests/reference/outline-families.ts';
import { FAMILIES, outlinesOf } from '../../../../tests/reference/outline-families.ts';
import type { Polygon } from '../../../../tests/reference/outline-shapes.ts';
import { perimeterOf, snapped } from '../../../../tests/reference/outline-shapes.ts';
import { slabUnion } from '../../../../tests/reference/slab-union.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Outline } from '../kernel/outline.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { UnionFacts } from './union-facts.ts';
import { unionFacts } from './union-facts.ts';

const SEED = 20260401;
const NAMES = Object.keys(FAMILIES) as Family[];
const EXACT = { contactMm: 0, gapAllowanceMm: 0 };
const CONTACT = { contactMm: CONTACT_MM, gapAllowanceMm: CONTACT_MM };
const TRACED = { contactMm: CONTACT_MM, gapAllowanceMm: 2 };
/**
 * References need coordinates on a grid, a power of two so that doubles hold them. Shifts and turns of less than a
 * millionth of a millimetre need a finer one; far from the origin, and for sides that should coincide after a turn, the
 * grid is coarser than what counts as coinciding.
 */
const gridOf = (family: Family): number => (family.endsWith('a little') ? 2 ** -32 : 2 ** -20);

describe.each(NAMES)(`%s (seed ${SEED})`, (family) => {
  it(`${share(1500, 40)} cases`, { timeout: 600_000 }, () => {
    let worst = 0;
    for (let k = 0; k < share(1500, 40); k += 1) worst = Math.max(worst, check(family, SEED + k));
    console.log(`${family}: area and perimeter off by ${worst.toExponential(1)} at most`);
  });
});

const fresh = freshSeed('outline families');
it(`13 fresh cases of each family (seed ${fresh})`, { timeout: 600_000 }, () => {
  for (const family of NAMES) for (let k = 0; k < 13; k += 1) check(family, (fresh + k) % 2 ** 31);
});

/** Checks one case; the greater of the relative errors of area and perimeter. */
function check(family: Family, seed: number): number {
  const what = `${family}, case ${seed}`;
  const [raw, grid] = [outlinesOf(family, seed), gridOf(family)];
  const outlines = snapped(raw, grid);
  const expected = reference(outlines, grid);
  const facts = unionFacts(outlines, EXACT);
  const perimeterMm = perimeter(facts);
  expectNear(facts.areaMm2, expected.areaMm2, { relative: 1e-6 }, `area of ${what}`);
  expectNear(perimeterMm, expected.perimeterMm, { relative: 1e-6 }, `perimeter of ${what}`);
  const wayMm = raw.reduce((total, one) => total + perimeterOf(one), 0);
  for (const policy of [EXACT, CONTACT, TRACED]) {
    const rough = unionFacts(raw, policy);
    // The grid moved every side by less than a step; and where three sides cross within 1e-9 rad of each other, rounding
    // puts their crossings a millionth of a millimetre apart.
    const allowed = { absolute: grid * wayMm + 1e-8 * expected.areaMm2 };
    expectNear(rough.areaMm2, expected.areaMm2, allowed, `raw area of ${what}`);
    expect(rough.areaMm2).toBe(unionFacts(raw, EXACT).areaMm2);
    expect(
      Object.values(rough)
        .flat()
        .every((v) => typeof v !== 'number' || Number.isFinite(v)),
      what,
    ).toBe(true);
    if (policy !== TRACED) expect(perimeter(rough), what).toBeLessThanOrEqual(wayMm * (1 + 1e-12));
  }
  const off = (actual: number, wanted: number): number => (wanted === 0 ? 0 : Math.abs(actual / wanted - 1));
  return Math.max(off(facts.areaMm2, expected.areaMm2), off(perimeterMm, expected.perimeterMm));
}

const perimeter = (facts: UnionFacts): number => facts.outerPerimeterMm + facts.innerPerimeterMm;

function reference(outlines: readonly Outline[], grid: number): { areaMm2: number; perimeterMm: number } {
  return outlines.every((one): one is Polygon => one.kind === 'polygon')
    ? exactUnion(
        outlines.map(({ points }) => points),
        grid,
      )
    : slabUnion(outlines);
}
