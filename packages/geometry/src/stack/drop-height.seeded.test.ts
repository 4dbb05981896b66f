// The drop against slow second methods on seeded pairs: polyhedra against brute force, curved bodies against closed forms
// and a search over slopes. Errors are relative to the size of the pair; what was measured is printed.

import { expect, it } from 'vitest';
import { ball, box, cone, cylinder, dome, moved, placed } from '../../../../tests/reference/bodies.ts';
import { bruteForceDrop } from '../../../../tests/reference/drop-brute-force.ts';
import { dualSearchDrop } from '../../../../tests/reference/drop-dual-search.ts';
import { bruteForcePlanDepth } from '../../../../tests/reference/plan-brute-force.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { share } from '../../../../tests/tools/share.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import { shadow } from '../solids/shadow.ts';
import { bodyBox } from './body-box.ts';
import { dropHeight } from './drop-height.ts';
import { planOverlapDepth } from './plan-overlap.ts';

const SEED = 20260311;

/** Time for a whole family in the long run, on a busy machine. */
const LONG_MS = 300_000;

it(`1 365 pairs of polyhedra against brute force (seed ${SEED})`, () => {
  const draw = seeded(SEED);
  const found = { pairs: 0, rounds: 0, worst: 0 };
  while (found.pairs < 1365) {
    const [upper, lower] = [corners(draw), corners(draw)];
    const depthMm = bruteForcePlanDepth(upper, lower);
    if (depthMm < -TOUCHING_MM) expect(dropHeight(flat(upper), flat(lower))).toBeNull();
    if (depthMm > TOUCHING_MM) check(found, flat(upper), flat(lower), bruteForceDrop(upper, lower));
  }
  report('polyhedra', found);
});

it(
  `1 000 pairs with curved pieces against a search over slopes (seed ${SEED + 1})`,
  () => {
    const draw = seeded(SEED + 1);
    const found = { pairs: 0, rounds: 0, worst: 0 };
    while (found.pairs < share(1000, 150)) {
      const [upper, lower] = [anyBody(draw), anyBody(draw)];
      if (!isSteep(upper, lower)) check(found, upper, lower, dualSearchDrop(upper, lower, STEEPEST));
    }
    report('curved pieces', found);
  },
  LONG_MS,
);

it(`2 000 balls on a box, at a radius from it in closed form (seed ${SEED + 2})`, () => {
  const draw = seeded(SEED + 2);
  const found = { pairs: 0, rounds: 0, worst: 0 };
  while (found.pairs < 2000) {
    const [x, y, radiusMm] = [tidyOrNot(draw, 4), tidyOrNot(draw, 5), between(draw, 0.3, 5)];
    const beside = Math.hypot(Math.max(0, Math.abs(x) - 1.5), Math.max(0, Math.abs(y) - 2.5));
    if (beside > 0.99 * radiusMm) continue;
    const expected = 7 + Math.sqrt(radiusMm ** 2 - beside ** 2) - radiusMm;
    check(found, moved(ball(radiusMm), x, y), box(3, 5, 7), expected);
  }
  report('balls on boxes', found);
});

it(
  `2 000 balls on pieces of all kinds against a search over slopes (seed ${SEED + 3})`,
  () => {
    const draw = seeded(SEED + 3);
    const found = { pairs: 0, rounds: 0, worst: 0 };
    while (found.pairs < share(2000, 150)) {
      const upper = moved(ball(between(draw, 0.3, 5)), tidyOrNot(draw, 4), tidyOrNot(draw, 5));
      const lower = anyBody(draw);
      if (isSteep(upper, lower)) continue;
      check(found, upper, lower, dualSearchDrop(upper, lower, STEEPEST));
    }
    report('balls on anything', found);
  },
  LONG_MS,
);

it(
  `20 000 pairs from 0.1 mm to 1 m, slivers and needles too: always settled, and null just when apart (seed ${SEED + 4})`,
  () => {
    const draw = seeded(SEED + 4);
    const found = { pairs: 0, most: 0, against: 0, worst: 0 };
    for (let pair = 0; pair < share(20_000, 1500); pair++) {
      const lower = slender(draw);
      const [x, y] = [between(draw, -1, 1), between(draw, -1, 1)];
      const upper = slender(draw);
      const [sizeMm, widths] = extent(upper, lower);
      const put = moved(upper, x * widths[0], y * widths[1]);
      const depthMm = planOverlapDepth(shadow(put), shadow(lower));
      const drop = dropHeight(put, lower);
      // Outlines of round shadows are true to 1e-6; a shadow thinner than 1e-5 of the pair is not asked about.
      if (depthMm < -1e-5 * sizeMm) expect(drop, `pair ${pair}`).toBeNull();
      if (depthMm < 1e-5 * sizeMm) continue;
      if (drop === null) throw new Error(`pair ${pair}: no drop found`);
      expect(drop.converged, `pair ${pair}`).toBe(true);
      found.pairs++;
      found.most = Math.max(found.most, drop.rounds);
      if (pair % 10 > 0 || drop.normal[2] < 1.1 / STEEPEST) continue;
      const error = Math.abs(drop.heightMm - dualSearchDrop(put, lower, STEEPEST)) / sizeMm;
      expect(error, `pair ${pair}`).toBeLessThanOrEqual(1e-12);
      found.against++;
      found.worst = Math.max(found.worst, error);
    }
    console.log(
      `lopsided: ${found.pairs} pairs, at most ${found.most} rounds; ${found.against} of them searched over slopes,`,
    );
    console.log(`  worst error ${found.worst.toExponential(1)} of the size`);
  },
  LONG_MS,
);

interface Found {
  pairs: number;
  rounds: number;
  worst: number;
}

function check(found: Found, upper: Body, lower: Body, expected: number): void {
  const drop = dropHeight(upper, lower);
  if (drop === null) throw new Error(`pair ${found.pairs}: no drop found`);
  const error = Math.abs(drop.heightMm - expected) / SIZE_MM;
  expect(error, `pair ${found.pairs}`).toBeLessThanOrEqual(1e-12);
  expect(drop.converged, `pair ${found.pairs}`).toBe(true);
  found.pairs++;
  found.rounds += drop.rounds;
  found.worst = Math.max(found.worst, error);
}

function report(label: string, { pairs, rounds, worst }: Found): void {
  const mean = (rounds / pairs).toFixed(1);
  console.log(`${label}: ${pairs} pairs, worst error ${worst.toExponential(1)} of the size, ${mean} rounds on average`);
}

type Draw = () => number;

const between = (draw: Draw, low: number, high: number): number => low + (high - low) * draw();
const whole = (draw: Draw, low: number, high: number): number => Math.floor(between(draw, low, high + 1));

/** Half of the time at a multiple of half a millimetre, where axes, corners and edges lie over each other. */
const tidyOrNot = (draw: Draw, limit: number): number =>
  draw() < 0.5 ? whole(draw, -2 * limit, 2 * limit) / 2 : between(draw, -limit, limit);

/** Corners in a lopsided box, about half of them at tidy places. */
const corners = (draw: Draw): readonly Vec3[] =>
  Array.from({ length: whole(draw, 4, 9) }, (): Vec3 => [tidyOrNot(draw, 3), tidyOrNot(draw, 5), tidyOrNot(draw, 3)]);

const flat = (corners: readonly Vec3[]): Body => [{ kind: 'points', points: corners }];

/** A piece of any make, half of the time upright, half of the time thrown. */
function anyBody(draw: Draw): Body {
  const made = [box(3, 5, 7), cylinder(3, 5), cone(3, 7), cone(5, 2), dome(4), ball(3), flat(corners(draw))];
  const body = made[whole(draw, 0, made.length - 1)] ?? [];
  return draw() < 0.5 ? body : placed(body, between(draw, 0, 6), between(draw, 0, 6), [between(draw, -1, 1), 0, 0]);
}

/** A piece whose sizes are drawn from four decades, half of the time upright. */
function slender(draw: Draw): Body {
  const size = (): number => 10 ** between(draw, -1, 3);
  const made = [
    box(size(), size(), size()),
    cylinder(size(), size()),
    cone(size(), size()),
    dome(size()),
    ball(size()),
  ];
  const body = made[whole(draw, 0, made.length - 1)] ?? [];
  return draw() < 0.5 ? body : placed(body, between(draw, 0, 6), between(draw, 0, 6), [0, 0, 0]);
}

/** The size of a pair, and how far apart in plan their boxes still touch. */
function extent(upper: Body, lower: Body): readonly [sizeMm: number, widths: readonly [number, number]] {
  const [a, b] = [bodyBox(upper), bodyBox(lower)];
  const sizes = [0, 1, 2].map((k) => (a.max[k] ?? 0) - (a.min[k] ?? 0) + (b.max[k] ?? 0) - (b.min[k] ?? 0));
  return [Math.hypot(...sizes), [(sizes[0] ?? 0) / 2, (sizes[1] ?? 0) / 2]];
}

/** The slope search is bounded; contacts nearly upright are left to the closed forms. */
function isSteep(upper: Body, lower: Body): boolean {
  const drop = dropHeight(upper, lower);
  return drop === null || drop.normal[2] < 1.1 / STEEPEST;
}

const STEEPEST = 12;
const SIZE_MM = Math.hypot(6, 10, 7);
const TOUCHING_MM = 1e-9;
