// A third opinion on area, perimeter, parts and holes: the library Clipper2 in its TypeScript port, on outlines in general
// position. Of discs it sees polygons of 720 corners.

import { Clipper, FillRule } from 'clipper2-ts';
import { expect, it } from 'vitest';
import type { Dice } from '../../../../tests/reference/dice.ts';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import type { Polygon } from '../../../../tests/reference/outline-shapes.ts';
import { disc, ngon, perimeterOf, polygon } from '../../../../tests/reference/outline-shapes.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Outline } from '../kernel/outline.ts';
import { signedAreaMm2 } from '../kernel/polygon.ts';
import { unionFacts } from './union-facts.ts';

const SEED = 20260407;
const CASES = share(500, 60);

const polygons = ({ between, whole }: Dice): Outline =>
  ngon(between(0, 150), between(0, 150), between(8, 25), whole(3, 9), between(0, 7));
const discs = ({ between }: Dice): Outline => disc(between(0, 150), between(0, 150), between(8, 25));
const mixed = (dice: Dice): Outline => dice.oneOf([polygons, discs])(dice);

it.each([
  // The library works on a grid of 1e-6 mm.
  ['polygons', polygons, 1e-6],
  // A polygon of 720 corners is off by (2 pi / 720)^2 / 6 of its area, and a quarter of that of its perimeter.
  ['discs', discs, 1.3e-5],
  ['polygons and discs', mixed, 1.3e-5],
] as const)(`${CASES} builds of 3 to 40 %s (seed ${SEED})`, (_, kind, relative) => {
  let holes = 0;
  for (let k = 0; k < CASES; k += 1) {
    const dice = diceOf(SEED + k);
    const outlines = times(dice.whole(3, 40), () => kind(dice));
    const rings = clipperUnion(outlines);
    const areas = rings.map(({ points }) => signedAreaMm2(points));
    const facts = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
    expectNear(facts.areaMm2, sum(areas), { relative }, `area, case ${k}`);
    const perimeterMm = facts.outerPerimeterMm + facts.innerPerimeterMm;
    expectNear(perimeterMm, sum(rings.map(perimeterOf)), { relative: 10 * relative }, `perimeter, case ${k}`);
    expect([facts.parts, facts.holes], `parts and holes, case ${k}`).toEqual([
      areas.filter((area) => area > 0).length,
      areas.filter((area) => area < 0).length,
    ]);
    const courtyardMm2 = -sum(areas.filter((area) => area < 0));
    expectNear(facts.courtyardMm2, courtyardMm2, { absolute: 10 * relative * facts.areaMm2 }, `courtyard, case ${k}`);
    holes += facts.holes;
  }
  expect(holes).toBeGreaterThan(20);
});

function clipperUnion(outlines: readonly Outline[]): readonly Polygon[] {
  const paths = outlines.map((one) => cornersOf(one).points.map(([x, y]) => ({ x, y })));
  return Clipper.unionD(paths, [], FillRule.NonZero, 6).map((path) => polygon(path.map(({ x, y }) => [x, y])));
}

const cornersOf = (outline: Outline): Polygon =>
  outline.kind === 'disc' ? ngon(outline.centre[0], outline.centre[1], outline.radiusMm, 720, 0) : outline;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
