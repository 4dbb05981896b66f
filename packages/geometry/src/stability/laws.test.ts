// What must hold for every build, whatever its figures: seeded towers and forts of real solids. mm, rad.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { FULL, judged, LIMITS, question } from '../../../../tests/reference/judged-builds.ts';
import { box, cone, cube, cylinder, put } from '../../../../tests/reference/stacked-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { LaidPiece } from '../stack/types.ts';
import { tiltTowards } from './on-request.ts';
import type { StabilityQuestion } from './question.ts';
import type { Stability } from './stability.ts';

const SEED = 35711;
const RUNS = { seed: SEED, numRuns: share(300, 12) };
/** A margin from programmes ends at a gain of 1e-9; turning rounds positions to 1e-13. */
const PUSH = { absolute: 1e-7 };
/** Off the fast path a disc presses through 48 corners of its rim, which do not turn with it: cos(pi / 48) of its reach. */
const RIM = { relative: 1 - Math.cos(Math.PI / 48) };
/** On round cones the worst direction is found to 0.1 degrees. */
const ROUND = { absolute: 2e-3 };

const specs = (k: number) => ({
  slab: box(90 * k, 30 * k, 10 * k),
  block: cube(30 * k),
  drum: cylinder(15 * k, 40 * k),
  hat: cone(15 * k, 30 * k),
});
/** No search for moves: these laws are about figures. */
const ask = (pieces: readonly LaidPiece[], k: number, friction: number): StabilityQuestion =>
  question(pieces, specs(k), FULL, friction, { solver: HIGHS, limits: { ...LIMITS, trials: 0 } });

const off = fc.integer({ min: -8, max: 8 });
/** A gate: two posts, a slab over both, and one more piece on the slab. */
const gate = fc
  .tuple(
    fc.constantFrom('block', 'drum'),
    off,
    off,
    off,
    off,
    fc.constantFrom('block', 'drum', 'hat'),
    fc.integer({ min: -30, max: 30 }),
  )
  .map(([post, a, b, c, d, top, along]): readonly LaidPiece[] => {
    const posts = post === 'block' ? ['block', 'block'] : ['drum', 'drum'];
    return [put(posts[0]!, -30 + a, b / 4), put(posts[1]!, 30 + c, d / 4), put('slab', 0, 0), put(top, along, 0)];
  });
const tower = fc
  .array(fc.tuple(fc.constantFrom('slab', 'block', 'drum'), off, off), { minLength: 1, maxLength: 5 })
  .map((steps) => steps.map(([kind, x, y]) => put(kind, x / 2, y / 2)));
const build = fc.oneof(gate, tower);
const mu = fc.constantFrom(0.2, 0.35, 0.6);

const moved = (pieces: readonly LaidPiece[], angle: number, k: number): readonly LaidPiece[] =>
  pieces.map((piece) => ({
    ...piece,
    xMm: k * (piece.xMm * Math.cos(angle) - piece.yMm * Math.sin(angle)),
    yMm: k * (piece.xMm * Math.sin(angle) + piece.yMm * Math.cos(angle)),
    turnRad: piece.turnRad + angle,
  }));

function expectSame(after: Stability, before: Stability): void {
  expect(after.stands).toBe(before.stands);
  if (before.tipsAt === null) return;
  expectNear(after.tipsAt!.push, before.tipsAt.push, before.joints === null ? RIM : PUSH, 'tips');
  expectNear(after.slidesAt!.push, before.slidesAt!.push, PUSH, 'slides');
  expectNear(after.standsTo!.push, before.standsTo!.push, ROUND, 'stands to');
}

it(`turning the whole build turns the worst direction and leaves the margins (seed ${SEED})`, () => {
  fc.assert(
    fc.property(build, mu, fc.double({ min: -3, max: 3, noNaN: true }), (pieces, friction, angle) => {
      const before = judged(ask(pieces, 1, friction));
      const after = judged(ask(moved(pieces, angle, 1), 1, friction));
      expectSame(after, before);
      if (before.tipsAt === null) return;
      // Where two directions are equally bad either may be named: the turned one must be as bad as the one named.
      const [x, y] = before.standsTo!.direction;
      const turned: Vec2 = [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
      const there = tiltTowards(ask(moved(pieces, angle, 1), 1, friction), turned);
      expectNear(there.ok ? there.value!.push : Number.NaN, after.standsTo!.push, ROUND, 'worst direction');
    }),
    RUNS,
  );
});

it('a gate turned by 0.00038 rad has its margins too', () => {
  // Found by the law above: the primal simplex took the region of pushes for unbounded.
  const gatePieces = [put('drum', -30, 0), put('drum', 30, 0), put('slab', 0, 0), put('block', 0, 0)];
  expectSame(judged(ask(moved(gatePieces, -0.00037633049547103234, 1), 1, 0.2)), judged(ask(gatePieces, 1, 0.2)));
});

it(`a build k times as large tilts as far (seed ${SEED})`, () => {
  fc.assert(
    fc.property(build, mu, fc.constantFrom(0.7, 2, 3), (pieces, friction, k) => {
      expectSame(judged(ask(moved(pieces, 0, k), k, friction)), judged(ask(pieces, 1, friction)));
    }),
    RUNS,
  );
});

it(`a heavier material throughout changes nothing (seed ${SEED})`, () => {
  fc.assert(
    fc.property(build, mu, (pieces, friction) => {
      const light = ask(pieces, 1, friction);
      const heavy = question(pieces, specs(1), { kind: 'full', densityGPerCm3: 11.3 }, friction, {
        solver: HIGHS,
        limits: light.limits,
      });
      expectSame(judged(heavy), judged(light));
    }),
    RUNS,
  );
});

it(`more friction never lowers the tilt it stands to (seed ${SEED})`, () => {
  fc.assert(
    fc.property(build, mu, fc.double({ min: 0, max: 0.5, noNaN: true }), (pieces, friction, more) => {
      const [less, rougher] = [judged(ask(pieces, 1, friction)), judged(ask(pieces, 1, friction + more))];
      if (less.standsTo === null) return;
      expect(rougher.standsTo!.push).toBeGreaterThanOrEqual(less.standsTo.push - ROUND.absolute);
    }),
    RUNS,
  );
});

it(`a wider base under a coaxial tower never lowers the tilt at which it tips (seed ${SEED})`, () => {
  const width = fc.integer({ min: 20, max: 90 });
  fc.assert(
    fc.property(
      fc.array(width, { minLength: 1, maxLength: 4 }),
      width,
      fc.integer({ min: 0, max: 40 }),
      (above, base, wider) => {
        const coaxial = (bottom: number): Stability => {
          const widths = [bottom, ...above];
          const kinds = Object.fromEntries(widths.map((w, i) => [`box-${i}`, box(w, w, 25)]));
          const pieces = widths.map((_, i) => put(`box-${i}`, 0, 0));
          return judged(question(pieces, kinds, FULL, 50, { limits: { ...LIMITS, trials: 0 } }));
        };
        expect(coaxial(base + wider).tipsAt!.push).toBeGreaterThanOrEqual(coaxial(base).tipsAt!.push - 1e-12);
      },
    ),
    RUNS,
  );
});
