// The worked cases of the best build (tests/corpus/points-examples.json) as the search takes them. The file's lengths are cm:
// taken as they stand, for the search knows no scale.

import type { BestGoal, BestKind, BestTask } from '@cairnmark/scoring';
import file from '../../corpus/points-examples.json' with { type: 'json' };

export type Stock = Readonly<Record<string, number | undefined>>;

export const CASES = file;

const ORIENTATIONS: Readonly<Record<string, readonly Orientation[]>> = file.orientations;

interface Orientation {
  readonly height: number;
  readonly comHeight: number;
  readonly bottomIn: number;
  readonly topIn: number;
  readonly contact: number;
  readonly outline: number;
  readonly mass: number;
}

export const EXAMPLE_KINDS: readonly string[] = Object.keys(ORIENTATIONS);

export interface Asked {
  readonly kit: Stock;
  readonly pieces: number;
  readonly exactly: boolean;
  readonly minTiltDegrees: number;
  readonly base: string;
  readonly baseMaxCm2: number | null;
}

/** `bonus`: points of one piece of a kind, under the measure `bonus`. */
export function taskOf(asked: Asked, goal: BestGoal, bonus: Stock = {}): BestTask {
  return {
    kinds: Object.entries(asked.kit).map(([id, stock]) => exampleKind(id, stock ?? 0, asked.base, bonus[id] ?? 0)),
    pieces: { least: asked.exactly ? asked.pieces : 1, most: asked.pieces },
    beside: false,
    baseAtMostMm2: asked.baseMaxCm2,
    pushAtLeast: Math.tan((asked.minTiltDegrees * Math.PI) / 180),
    grips: null,
    goal,
  };
}

export function exampleKind(id: string, stock: number, base: string, bonus: number): BestKind {
  const ups = ORIENTATIONS[id] ?? [];
  const [first] = ups;
  if (first === undefined) throw new RangeError(`no ways up of ${id}`);
  return {
    id,
    stock,
    least: 0,
    massG: first.mass,
    mostHeightMm: Math.max(...ups.map(({ height }) => height)),
    aloneHeightMm: Math.max(0, ...ups.filter(({ topIn }) => topIn > 0).map(({ height }) => height)),
    // On a round side it lies on a line or a point, whether the file has that way up or not.
    rolls: ['cylinder', 'cone', 'sphere', 'hemisphere', 'coneFrustum'].includes(id),
    measures: { bonus },
    ways: ups.map(({ height, comHeight, bottomIn, topIn, contact, outline }, way) => ({
      id: `${way}`,
      heightMm: height,
      centreHeightMm: comHeight,
      bottomInsideMm: bottomIn,
      topInsideMm: topIn,
      bottomClippedMm: bottomIn,
      topClippedMm: topIn,
      baseMm2: base === 'contact' ? contact : outline,
      // The file has no widths: those of a square as large.
      baseWidthMm: Math.sqrt(base === 'contact' ? contact : outline),
    })),
  };
}
