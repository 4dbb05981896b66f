// A third opinion on areas and perimeters: the library Clipper2 in its TypeScript port, on polygons in general position.

import { Clipper, FillRule } from 'clipper2-ts';
import { expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import { ngon } from '../../../../tests/reference/outline-shapes.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { unionFacts } from './union-facts.ts';

const SEED = 20260407;

it(`${share(500, 60)} builds of 3 to 40 polygons (seed ${SEED})`, () => {
  let holes = 0;
  for (let k = 0; k < share(500, 60); k += 1) {
    const { between, whole } = diceOf(SEED + k);
    const outlines = times(whole(3, 40), () =>
      ngon(between(0, 150), between(0, 150), between(8, 25), whole(3, 9), between(0, 7)),
    );
    const paths = outlines.map(({ points }) => points.map(([x, y]) => ({ x, y })));
    const united = Clipper.unionD(paths, [], FillRule.NonZero, 6);
    const areas = united.map((path) => Clipper.areaD(path));
    const facts = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
    // The library works on a grid of 1e-6 mm.
    expectNear(
      facts.areaMm2,
      areas.reduce((sum, area) => sum + area, 0),
      { relative: 1e-6 },
      `area, case ${k}`,
    );
    const length = united.reduce(
      (sum, path) =>
        sum +
        path.reduce(
          (way, { x, y }, i) =>
            way + Math.hypot(path[(i + 1) % path.length]!.x - x, path[(i + 1) % path.length]!.y - y),
          0,
        ),
      0,
    );
    expectNear(facts.outerPerimeterMm + facts.innerPerimeterMm, length, { relative: 1e-6 }, `perimeter, case ${k}`);
    expect([facts.parts, facts.holes], `parts and holes, case ${k}`).toEqual([
      areas.filter((area) => area > 0).length,
      areas.filter((area) => area < 0).length,
    ]);
    holes += facts.holes;
  }
  expect(holes).toBeGreaterThan(20);
});
