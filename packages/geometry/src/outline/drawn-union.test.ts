// The union for drawing: rings, holes, discs as 64-gons, and the rungs of the ladder.

import { describe, expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import { outlinesOf } from '../../../../tests/reference/outline-families.ts';
import { box, disc, moved, ngon, turn } from '../../../../tests/reference/outline-shapes.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Outline } from '../kernel/outline.ts';
import { signedAreaMm2 } from '../kernel/polygon.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { DrawnPart } from './drawn-union.ts';
import { drawnUnion } from './drawn-union.ts';
import { unionFacts } from './union-facts.ts';

function drawn(outlines: readonly Outline[]): readonly DrawnPart[] {
  const result = drawnUnion(outlines, CONTACT_MM);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

const areaOf = (parts: readonly DrawnPart[]): number =>
  parts.reduce(
    (total, { outer, holes }) => total + [outer, ...holes].reduce((sum, ring) => sum + signedAreaMm2(ring), 0),
    0,
  );

it('four walls are a ring with a hole, the outer ring one way round and the hole the other', () => {
  const [part, ...others] = drawn([box(100, 0, 10, 1), box(100, 7, 10, 1), box(100, 1, 1, 6), box(109, 1, 1, 6)]);
  expect(others).toEqual([]);
  expectNear(signedAreaMm2(part!.outer), 80, { relative: 1e-12 });
  expect(part!.holes.map(signedAreaMm2).map(Math.round)).toEqual([-48]);
});

it('a disc is a 64-gon on its rim', () => {
  const [part] = drawn([disc(3, 5, 7)]);
  expect(part!.outer.length).toBe(64);
  // Inscribed polygon of n corners: less by 1 - (n / 2 pi) sin(2 pi / n), for 64 it is 1.606e-3.
  // Corners on a grid of 1e-4 mm: a few millionths more or less.
  expectNear(1 - signedAreaMm2(part!.outer) / (49 * Math.PI), 1.606e-3, { absolute: 1e-5 });
});

it('turned boxes a little apart or over each other are drawn as one', () => {
  for (const gap of [0, 1e-9, 1e-5, 0.02, -0.02]) {
    const parts = drawn([box(0, 0, 50, 30), box(7, 30 + gap, 30, 20)].map((one) => moved(one, turn(0.3))));
    expect(parts.map(({ holes }) => holes.length)).toEqual([0]);
  }
});

it('what has no area is not drawn', () => {
  expect(drawn([])).toEqual([]);
  expect(drawn([disc(0, 0, 0)])).toEqual([]);
});

describe('past fifty outlines, by halves', () => {
  it('300 boxes that nearly coincide', () => {
    const { between } = diceOf(3);
    const boxes = times(300, () => ngon(between(0, 0.2), between(0, 0.2), 30, 4, between(0, 0.01)));
    expect(drawn(boxes).length).toBe(1);
  });

  it('200 spread out', () => {
    const { between, oneOf } = diceOf(5);
    const outlines = times(200, () =>
      oneOf([disc, (x: number, y: number, r: number) => box(x, y, r, r)])(
        between(0, 600),
        between(0, 600),
        between(8, 30),
      ),
    );
    const facts = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
    expectNear(areaOf(drawn(outlines)), facts.areaMm2, { relative: 2e-3 });
  });
});

const SEED = 20260406;
describe.each(['towers', 'rounds', 'turned hexagon tilings', 'traced rings', 'rings that close a hole'] as const)(
  `%s (seed ${SEED})`,
  (family) => {
    it('are drawn, with their area', () => {
      for (let k = 0; k < share(400, 20); k += 1) {
        const outlines = outlinesOf(family, SEED + k);
        const facts = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
        // 64-gons, the weld along the boundary, and the grid.
        const allowed = 1.7e-3 * facts.areaMm2 + CONTACT_MM * 2 * (facts.outerPerimeterMm + facts.innerPerimeterMm);
        expectNear(areaOf(drawn(outlines)), facts.areaMm2, { absolute: allowed }, `${family}, case ${SEED + k}`);
      }
    });
  },
);
