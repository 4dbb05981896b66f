// Taps of a person who aims at the right places and is off by some pixels: two corners, or three places round a rim.

import type { TowerTaps } from '@cairnmark/photo';
import { diceOf } from '../dice.ts';
import type { Point2 } from './camera-of-truth.ts';
import { listed } from './listed.ts';
import type { TrueTower } from './truth.ts';

/** px: standard deviation of either coordinate, and what the fit is told of it. */
export interface TapNoise {
  readonly seed: number;
  readonly sigmaPx: number;
}

export function tapsOn(tower: TrueTower, { seed, sigmaPx }: TapNoise): TowerTaps {
  const { between, whole } = diceOf(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(between(0, 1))) * Math.cos(2 * Math.PI * between(0, 1));
  const noisy = ([x, y]: Point2): Point2 => [x + sigmaPx * normal(), y + sigmaPx * normal()];
  const told = Math.max(sigmaPx, LEAST_TOLD_PX);
  const pieces = tower.pieces.map((piece, k) => {
    const shown = tower.tappable[k]!;
    const first = whole(0, shown.length - 1);
    const chosen = piece.outline === undefined ? spread(shown, first, 3) : farApart(shown, first);
    return { kind: `piece-${k}`, ...listed(piece), taps: { pixels: chosen.map(noisy), sigmaPx: told } };
  });
  return { pieces, top: { pixels: [noisy(tower.topTap)], sigmaPx: told } };
}

/** Nobody is told to be sure to less than half a pixel. */
const LEAST_TOLD_PX = 0.5;

const spread = (points: readonly Point2[], first: number, count: number): readonly Point2[] =>
  Array.from({ length: count }, (_, k) => points[(first + Math.round((k * points.length) / count)) % points.length]!);

/** A corner, and of the others the one furthest from it, as people choose. */
function farApart(corners: readonly Point2[], first: number): readonly Point2[] {
  const from = corners[first]!;
  const far = (point: Point2): number => Math.hypot(point[0] - from[0], point[1] - from[1]);
  return [from, corners.reduce((a, b) => (far(b) > far(a) ? b : a))];
}
