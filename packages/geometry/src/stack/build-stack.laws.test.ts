// What must hold for every layout: seeded piles of pieces of many makes. mm, rad.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { box, cone, cylinder, put, solidsOf, sphere, stackOf } from '../../../../tests/reference/stacked-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { SolidSpec } from '../solids/types.ts';
import { dropHeight } from './drop-height.ts';
import { planOverlapDepth } from './plan-overlap.ts';
import type { FaceContact, LaidPiece, SolidsByKind, Stack } from './types.ts';

const SEED = 5081;
const RUNS = { seed: SEED, numRuns: share(500, 60) };
/** Layouts reach 1 m, where positions are rounded to 1e-13; slopes of contacts and ten pieces on each other widen that. */
const LENGTH = { absolute: 1e-8 };
const AREA = { absolute: 1e-6 };

const specs = (k: number): Readonly<Record<string, SolidSpec>> => ({
  brick: box(30 * k, 50 * k, 70 * k),
  log: cylinder(20 * k, 70 * k),
  cone: cone(30 * k, 40 * k),
  ball: sphere(25 * k),
  dome: { solid: 'hemisphere', sizes: { radius: 30 * k } },
  stone: { solid: 'octahedron', sizes: { edge: 50 * k } },
  roof: { solid: 'triangular-prism', sizes: { a: 30 * k, b: 40 * k, c: 50 * k, height: 70 * k } },
});
const SOLIDS = solidsOf(specs(1));
const RESTINGS = [...SOLIDS].flatMap(([kind, { restings }]) => restings.map(({ id }) => ({ kind, resting: id })));

/** Half of the places are whole centimetres and quarter turns, where faces, edges and axes fall together. */
const place = fc.oneof(
  fc.integer({ min: -6, max: 6 }).map((cm) => 10 * cm),
  fc.double({ min: -60, max: 60, noNaN: true }),
);
const turn = fc.oneof(
  fc.integer({ min: 0, max: 3 }).map((q) => (q * Math.PI) / 2),
  fc.double({ min: 0, max: 6, noNaN: true }),
);
const piece = fc
  .tuple(fc.constantFrom(...RESTINGS), place, place, turn)
  .map(([{ kind, resting }, x, y, turnRad]) => put(kind, x, y, { resting, turnRad }));
const layout = fc.array(piece, { minLength: 1, maxLength: 10 });

const topMm = (stack: Stack): number => Math.max(0, ...stack.pieces.map((one) => one.topMm));

function expectSameContacts(actual: readonly FaceContact[], expected: readonly FaceContact[]): void {
  const sums = (contacts: readonly FaceContact[]): Map<string, number> => {
    const byPair = new Map<string, number>();
    for (const { first, second, areaMm2 } of contacts) {
      byPair.set(`${first} ${second}`, (byPair.get(`${first} ${second}`) ?? 0) + areaMm2);
    }
    return byPair;
  };
  const [found, wanted] = [sums(actual), sums(expected)];
  expect([...found.keys()].sort()).toEqual([...wanted.keys()].sort());
  for (const [pair, areaMm2] of wanted) expectNear(found.get(pair) ?? 0, areaMm2, AREA, pair);
}

it(`turning and shifting the whole layout leaves every height, support and contact (seed ${SEED})`, () => {
  const far = fc.double({ min: -900, max: 900, noNaN: true });
  fc.assert(
    fc.property(layout, fc.double({ min: -4, max: 4, noNaN: true }), far, far, (pieces, angleRad, dx, dy) => {
      const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
      const moved = pieces.map((one) => ({
        ...one,
        xMm: dx + c * one.xMm - s * one.yMm,
        yMm: dy + s * one.xMm + c * one.yMm,
        turnRad: one.turnRad + angleRad,
      }));
      const [before, after] = [stackOf(pieces, SOLIDS), stackOf(moved, SOLIDS)];
      before.pieces.forEach((one, k) => {
        expectNear(after.pieces[k]?.bottomMm ?? -1, one.bottomMm, LENGTH);
      });
      const pairs = (stack: Stack): string[] => stack.supports.map(({ upper, lower }) => `${upper} on ${lower}`).sort();
      expect(pairs(after)).toEqual(pairs(before));
      expectSameContacts(after.faceContacts, before.faceContacts);
    }),
    RUNS,
  );
});

it(`one more piece leaves those before it and never lowers the top (seed ${SEED})`, () => {
  fc.assert(
    fc.property(layout, piece, (pieces, more) => {
      const [before, after] = [stackOf(pieces, SOLIDS), stackOf([...pieces, more], SOLIDS)];
      expect(after.pieces.slice(0, -1)).toEqual(before.pieces);
      expect(topMm(after)).toBeGreaterThanOrEqual(topMm(before));
    }),
    RUNS,
  );
});

it(`dropped again from where it lies, a piece stays: it touches a support and presses into nothing (seed ${SEED})`, () => {
  fc.assert(
    fc.property(layout, (pieces) => {
      const { pieces: placed, supports } = stackOf(pieces, SOLIDS);
      for (const upper of placed) {
        const gaps = placed.slice(0, upper.index).flatMap((lower) => {
          if (planOverlapDepth(upper.outline, lower.outline) <= 0.05) return [];
          return [-(dropHeight(upper.body, lower.body)?.heightMm ?? Number.NEGATIVE_INFINITY)];
        });
        expectNear(Math.min(upper.bottomMm, ...gaps), 0, LENGTH, `gap under ${upper.index}`);
        expect(supports.some((support) => support.upper === upper.index && support.closedMm === 0)).toBe(true);
      }
    }),
    RUNS,
  );
});

it(`on separate spots the order does not matter (seed ${SEED})`, () => {
  fc.assert(
    fc.property(
      fc.shuffledSubarray([0, 1, 2, 3, 4, 5], { minLength: 6 }),
      fc.array(piece, { minLength: 6, maxLength: 6 }),
      (order, pieces) => {
        const spread = pieces.map((one, k): LaidPiece => ({ ...one, xMm: 150 * k, yMm: 0 }));
        const before = stackOf(spread, SOLIDS).pieces;
        const after = stackOf(
          order.flatMap((k) => spread[k] ?? []),
          SOLIDS,
        ).pieces;
        order.forEach((k, now) => {
          expect({ ...after[now], index: k }).toEqual(before[k]);
        });
      },
    ),
    RUNS,
  );
});

it(`a build k times as large is k times as high everywhere (seed ${SEED})`, () => {
  const kits: readonly (readonly [number, SolidsByKind])[] = [2, 3, 0.7].map((k) => [k, solidsOf(specs(k))]);
  fc.assert(
    fc.property(layout, fc.constantFrom(...kits), (pieces, [k, larger]) => {
      const scaled = pieces.map((one) => ({ ...one, xMm: k * one.xMm, yMm: k * one.yMm }));
      const [before, after] = [stackOf(pieces, SOLIDS), stackOf(scaled, larger)];
      before.pieces.forEach((one, index) => {
        expectNear(after.pieces[index]?.bottomMm ?? -1, k * one.bottomMm, LENGTH);
        expectNear(after.pieces[index]?.topMm ?? -1, k * one.topMm, LENGTH);
      });
    }),
    RUNS,
  );
});
