// Where a piece settles, against trying every place in the building order; and under lintels, by hand. mm.

import { CONTACT_MM } from '@cairnmark/geometry';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Intent } from '../../../tests/reference/edited-builds.ts';
import { bench, benchOf, done, reached, run, spot, stackAt } from '../../../tests/reference/edited-builds.ts';
import { box, cylinder } from '../../../tests/reference/stacked-builds.ts';
import { share } from '../../../tests/tools/share.ts';
import { dragOf, settle } from './drag.ts';
import type { Bench, FromShelf, Pieces, Spot } from './types.ts';

const SEED = 20261128;

it(`of all places in the order the latest that lands there and moves no other, else on top (seed ${SEED})`, () => {
  let under = 0;
  fc.assert(
    fc.property(bench, run, fc.nat(), spot, (over, intents, n, at) => {
      const pieces = reached(intents, over);
      const what = taken(pieces, over, n);
      const there = at(pieces, over);
      const { others, at: settleAt } = dragOf(pieces, what, over);
      const ghost = settleAt(there);
      if (!ghost.ok) throw new Error(JSON.stringify(ghost.issues));
      const expected = latestPlace(pieces, others, ghost.value.piece, there, over);
      expect(ghost.value.index).toBe(expected);
      const { pieces: placed } = stackAt(ghost.value.pieces, over);
      expect(placed[expected]?.bottomMm).toBe(ghost.value.bottomMm);
      expect(placed[expected]?.topMm).toBe(ghost.value.topMm);
      if (expected < others.length) under += 1;
    }),
    { seed: SEED, numRuns: share(2000, 80) },
  );
  expect(under).toBeGreaterThan(share(40, 1));
});

it(`round a bridge too, with pillars taken out and put in (seed ${SEED + 1})`, () => {
  let under = 0;
  fc.assert(
    fc.property(bridge, fc.nat(), spot, fc.constantFrom(0, 2), (pieces, n, at, slackMm) => {
      const over = { ...BRIDGES, slackMm };
      const there = at(pieces, over);
      const what = taken(pieces, over, n);
      const { others, at: settleAt } = dragOf(pieces, what, over);
      const ghost = settleAt(there);
      if (!ghost.ok) throw new Error(JSON.stringify(ghost.issues));
      expect(ghost.value.index).toBe(latestPlace(pieces, others, ghost.value.piece, there, over));
      if (ghost.value.index < others.length) under += 1;
    }),
    { seed: SEED + 1, numRuns: share(10_000, 400) },
  );
  expect(under).toBeGreaterThan(share(800, 40));
});

it(`a drag shows what the command does (seed ${SEED + 2})`, () => {
  fc.assert(
    fc.property(bench, run, fc.nat(), spot, (over, intents, n, at) => {
      const pieces = reached(intents, over);
      const what = taken(pieces, over, n);
      const there = at(pieces, over);
      const ghost = settle(pieces, what, there, over);
      if (!ghost.ok) throw new Error(JSON.stringify(ghost.issues));
      const edited = done(
        pieces,
        typeof what === 'number' ? { do: 'move-to', piece: what, spot: there } : { do: 'add-at', ...what, spot: there },
        over,
      );
      expect(edited.pieces).toEqual(ghost.value.pieces);
      expect([edited.piece, edited.earlier]).toEqual([ghost.value.index, ghost.value.earlier]);
    }),
    { seed: SEED + 2, numRuns: share(1000, 40) },
  );
});

/** A piece of the build, or one from the shelf that is left. */
function taken(pieces: Pieces, over: Bench, n: number): number | FromShelf {
  const left = [...over.solids.keys()].filter((kind) => pieces.filter((one) => one.kind === kind).length < 3);
  const k = n % (pieces.length + left.length);
  return k < pieces.length ? k : { kind: left[k - pieces.length] ?? '', resting: null, degrees: n % 360 };
}

/** By building every order: heights of the others may be as without the piece, or as before it was taken up. */
function latestPlace(before: Pieces, others: Pieces, piece: Pieces[number], at: Spot, over: Bench): number {
  const { surfaceMm } = at;
  if (surfaceMm === null) return others.length;
  const heights = (pieces: Pieces): ReadonlyMap<unknown, number> =>
    new Map(stackAt(pieces, over).pieces.map(({ bottomMm }, index) => [pieces[index], bottomMm]));
  const [was, without] = [heights(before), heights(others)];
  const near = (a: number, b = Number.NaN): boolean => Math.abs(a - b) <= over.slackMm + 1e-6;
  for (let index = others.length; index >= 0; index--) {
    const pieces = [...others.slice(0, index), piece, ...others.slice(index)];
    const now = tryHeights(pieces, over);
    if (now === null) continue;
    const bottomMm = now.get(piece) ?? Number.NaN;
    if (bottomMm < surfaceMm - CONTACT_MM || bottomMm > surfaceMm + CONTACT_MM + over.slackMm) continue;
    if (
      others.every(
        (one) => near(now.get(one) ?? Number.NaN, was.get(one)) || near(now.get(one) ?? Number.NaN, without.get(one)),
      )
    )
      return index;
  }
  return others.length;
}

function tryHeights(pieces: Pieces, over: Bench): ReadonlyMap<unknown, number> | null {
  try {
    return new Map(stackAt(pieces, over).pieces.map(({ bottomMm }, index) => [pieces[index], bottomMm]));
  } catch {
    return null;
  }
}

const BRIDGES = benchOf(
  { post: box(20, 20, 50), short: box(20, 20, 48.5), drum: cylinder(15, 50), slab: box(120, 40, 10) },
  3,
);

/** Two or three pillars in a row, a slab over them, and more on top of it or beside. */
const bridge: fc.Arbitrary<Pieces> = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom('post', 'short', 'drum'), fc.integer({ min: -5, max: 5 })), {
      minLength: 1,
      maxLength: 3,
    }),
    fc.array(fc.tuple(fc.constantFrom('slab', 'post'), fc.integer({ min: -6, max: 6 })), { maxLength: 2 }),
  )
  .map(([pillars, more]) => {
    const laid =
      (kind: string, cm: number): Intent =>
      () => ({
        do: 'add-at',
        kind,
        resting: null,
        spot: { xMm: 10 * cm, yMm: 0, surfaceMm: null, lineUp: 'free' },
      });
    return reached(
      [...pillars, ['slab', 0] as const, ...more].map(([kind, cm]) => laid(kind, cm)),
      BRIDGES,
    );
  });
