// The range of lengths only spares looks: whatever move a search through all lengths finds, the search within the range
// finds too. Checked on seeded towers, straight and side by side, full and folded, that fall or wobble.

import { describe, expect, it } from 'vitest';
import { FULL, judged, LIMITS, question, SHELL } from '../../../../tests/reference/judged-builds.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { box, cone, cylinder, put } from '../../../../tests/reference/stacked-builds.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import type { LaidPiece } from '../stack/types.ts';
import { bearsTilt, standsLevel } from './bears.ts';
import type { Material } from './material.ts';
import type { Mend } from './mend.ts';
import { shortestMend } from './mend.ts';
import type { StabilityQuestion } from './question.ts';
import { pose } from './question.ts';
import { ANY_SHIFT } from './shift-range.ts';
import { STEADY_RAD } from './verdict.ts';

const SPECS = {
  slab: box(70, 50, 30),
  post: box(40, 40, 60),
  drum: cylinder(30, 45),
  roof: cone(25, 50),
  cube: box(50, 50, 50),
  brick: box(80, 50, 30),
  tube: cylinder(25, 80),
  beam: box(150, 40, 12),
};
const STEP_MM = 3;
const FURTHEST_MM = 45;

/** The shortest move by trying every length of every move. */
function bySearch(
  asked: StabilityQuestion,
  candidates: readonly number[],
  steady: boolean,
  stepMm = STEP_MM,
): Mend | null {
  const posed = pose(asked, asked.pieces);
  if (!posed.ok) throw new Error('refused');
  const { stack } = posed.value;
  const search = {
    pieces: asked.pieces,
    stack,
    candidates,
    rulerStepMm: stepMm,
    furthestMm: Math.min(FURTHEST_MM, posed.value.problem.sizeMm / 2),
    meets: () => true,
    couldHelp: () => true,
    rangeOf: () => ANY_SHIFT,
    trials: Number.POSITIVE_INFINITY,
  };
  return shortestMend(search, (pieces) => {
    const moved = pose(asked, pieces);
    if (!moved.ok) return null;
    const { stack: now, problem } = moved.value;
    const good = () => (steady ? bearsTilt(problem, STEADY_RAD, [1, 0], LIMITS) : standsLevel(problem, LIMITS));
    return { stack: now, isGood: () => good() === true };
  });
}

/** 1 when the build falls or wobbles and the move offered is that of the full search, 0 when it is steady. */
function agrees(which: readonly number[], pieces: readonly LaidPiece[], material: Material, stepMm: number): 0 | 1 {
  const limits = { ...LIMITS, trials: Number.POSITIVE_INFINITY };
  const asked = question(pieces, SPECS, material, 0.5, { rulerStepMm: stepMm, slackMm: 1.5, limits });
  const answer = judged(asked);
  const candidates = [...new Set(answer.first.flatMap((failure) => failure.pieces))].sort((a, b) => a - b);
  const wobbly = answer.stands === true && answer.standsTo !== null && answer.standsTo.tiltRad < STEADY_RAD;
  if (answer.stands !== false && !wobbly) return 0;
  const offered = wobbly ? answer.steadyingMove : answer.mend;
  const found = offered !== null && offered.byMm <= FURTHEST_MM ? offered : null;
  expect([...which, found]).toEqual([...which, bySearch(asked, candidates, wobbly, stepMm)]);
  return 1;
}

const KINDS = ['slab', 'post', 'drum'] as const;

function tower(random: () => number, atMm: number): readonly LaidPiece[] {
  const count = 2 + Math.floor(random() * 3);
  const off = () => (random() - 0.5) * 50;
  let [x, y] = [atMm, 0];
  return Array.from({ length: count }, (_, k) => {
    const kind = k > 1 && k === count - 1 && random() < 0.4 ? 'roof' : (KINDS[Math.floor(random() * 3)] ?? 'slab');
    if (k > 0) [x, y] = [x + off(), y + off()];
    return put(kind, x, y, { turnRad: Math.floor(random() * 3) * 0.5 });
  });
}

/** A handful of fresh builds may all stand: only of these seeds it is known how many fall or wobble. */
const RANGES_SEED = 20_261;
const LOOKS_SEED = 20_262;

describe.each([RANGES_SEED, freshSeed('ranges of moves')])('moves within the range (seed %i)', (seed) => {
  const builds = share(400, 12);
  it(`are those of a full search, for ${builds} builds`, () => {
    const random = seeded(seed);
    let compared = 0;
    for (let k = 0; k < builds; k += 1) {
      const pieces = k % 4 === 0 ? [...tower(random, 0), ...tower(random, 75)] : tower(random, 0);
      const material = k % 2 === 0 ? FULL : SHELL;
      compared += agrees([seed, k], pieces, material, STEP_MM);
    }
    if (seed === RANGES_SEED) expect(compared).toBeGreaterThan(builds / 4);
  }, 300_000);
});

// The same of the quick look at lumps over their ground, on forts, which have no ranges.
describe.each([LOOKS_SEED, freshSeed('looks before moves')])('looks before a move (seed %i)', (seed) => {
  const builds = share(120, 6);
  it(`rule out nothing that a full search finds, for ${builds} gates`, () => {
    const random = seeded(seed);
    let compared = 0;
    for (let k = 0; k < builds; k += 1) {
      const at = () => (random() - 0.5) * 60;
      const pieces = [
        put('post', -45 + at() / 3, at() / 3),
        put('post', 45 + at() / 3, at() / 3),
        put('beam', 2.5 * at(), at() / 2, { turnRad: 0.3 * random() }),
        put('drum', 1.5 * at(), at() / 4),
      ];
      compared += agrees([seed, k], pieces, k % 2 === 0 ? FULL : SHELL, 6);
    }
    if (seed === LOOKS_SEED) expect(compared).toBeGreaterThan(0);
  }, 300_000);
});

// The rim of a drum as wide as the square it stands on leaves contacts with corners that all but coincide.
it('finds the 5 mm by which a drum as wide as its square hangs over', () => {
  const pieces = [put('cube', 0, 0), ...['brick', 'tube', 'cube'].map((kind) => put(kind, 30, 0))];
  const asked = question(pieces, SPECS, SHELL, 0.4, { rulerStepMm: 1, slackMm: 2, limits: LIMITS });
  expect(judged(asked).mend).toEqual({ piece: 1, moved: [1, 2, 3], side: 'left', byMm: 5 });
});

// Work is counted by the size of the build: a wall of sixty whose ends hang by a hair is given up, not tried for minutes.
it('gives a large shaky wall up within its work', () => {
  const rows = Array.from({ length: 12 }, (_, row) =>
    Array.from({ length: 5 }, (_, k) => put('brick', 80 * k + (row % 2) * 40, 0)),
  );
  const asked = question(rows.flat(), SPECS, SHELL, 0.4, {
    rulerStepMm: 1,
    slackMm: 0,
    limits: { ...LIMITS, trials: 3 },
  });
  expect(judged(asked).steadyingMove).toBeNull();
});
