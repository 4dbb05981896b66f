// Which small move of a piece sets its outline on steps of colour along most of its way. Every place of the outline votes for the
// step nearest to where the move would bring it; far moves count less, by how well the taps are known.

import type { Vec3 } from '@cairnmark/geometry';
import { SUPPORT_WORTH, VOTE_SIGMA_PX } from '../tolerance.ts';
import type { EdgeSample } from './edge-samples.ts';

export interface Vote {
  /** mm along x, mm along y, rad. */
  readonly move: Vec3;
  /** Share of the places with a step where the move brings the outline, 0 to 1. */
  readonly support: number;
  /** What it was chosen by: support, less what the move costs. */
  readonly score: number;
}

export interface VoteRange {
  /** mm, mm, rad: one standard deviation of the pose that the search begins from. */
  readonly sigma: Vec3;
  /** False for what is round. */
  readonly turns: boolean;
}

/** The best of a grid of moves over three deviations each way, then of ever finer ones about it. */
export function bestMove(samples: readonly EdgeSample[], { sigma, turns }: VoteRange): Vote {
  const rate = (move: Vec3): Vote => rated(samples, move, sigma);
  let best = rate([0, 0, 0]);
  let spread = GRID_SIGMAS / GRID_HALF;
  for (let level = 0; level < LEVELS; level += 1) {
    const about = best.move;
    const half = level === 0 ? GRID_HALF : 1;
    const turnHalf = turns ? Math.min(half, TURN_HALF) : 0;
    for (let i = -half; i <= half; i += 1) {
      for (let j = -half; j <= half; j += 1) {
        for (let k = -turnHalf; k <= turnHalf; k += 1) {
          const vote = rate([
            about[0] + i * spread * sigma[0],
            about[1] + j * spread * sigma[1],
            about[2] + k * spread * (level === 0 ? GRID_HALF / TURN_HALF : 1) * sigma[2],
          ]);
          if (vote.score > best.score) best = vote;
        }
      }
    }
    spread /= 2;
  }
  return best;
}

const [GRID_SIGMAS, GRID_HALF, TURN_HALF, LEVELS] = [3, 6, 4, 5];

/** How far across the outline a move brings a place, px. */
export const movedPx = ({ moves }: EdgeSample, move: Vec3): number =>
  moves[0] * move[0] + moves[1] * move[1] + moves[2] * move[2];

function rated(samples: readonly EdgeSample[], move: Vec3, sigma: Vec3): Vote {
  let votes = 0;
  for (const sample of samples) {
    const moved = movedPx(sample, move);
    let nearest = Number.POSITIVE_INFINITY;
    for (const { offsetPx } of sample.steps) nearest = Math.min(nearest, Math.abs(offsetPx - moved));
    votes += Math.exp(-((nearest / VOTE_SIGMA_PX) ** 2) / 2);
  }
  const support = samples.length === 0 ? 0 : votes / samples.length;
  const cost = move.reduce((sum, value, k) => sum + (value / (sigma[k] || 1)) ** 2, 0) / 2;
  return { move, support, score: SUPPORT_WORTH * support - cost };
}
