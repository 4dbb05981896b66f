// Seeded kits for the best build: kinds of the worked cases, larger and smaller, of several weights, under rules drawn by lot.

import type { BestGoal, BestKind, BestTask, PointsRow } from '@cairnmark/scoring';
import { seeded } from '../seeded.ts';
import { EXAMPLE_KINDS, exampleKind } from './best-examples.ts';

export interface KitSize {
  /** Kinds of piece, from and to. */
  readonly kinds: readonly [number, number];
  readonly pieces: readonly [number, number];
}

/** Few enough for every order to be tried. */
export const SMALL_KITS: KitSize = { kinds: [2, 5], pieces: [1, 4] };
/** Those of a classroom. */
export const CLASS_KITS: KitSize = { kinds: [6, 15], pieces: [5, 12] };

/** `everything`: also pieces beside, kinds that must be used, frictions and points. */
export function seededTask(seed: number, size: KitSize, everything: boolean): BestTask {
  const draw = seeded(seed);
  for (let warm = 0; warm < 3; warm += 1) draw();
  const whole = (from: number, to: number): number => from + Math.floor(draw() * (to - from + 1));
  const chance = (share: number): boolean => draw() < share;
  // Nothing more is drawn for it: the other kits stay as they were when a search once went wrong on them.
  const varied = seed % 3 === 0;
  const pool = [...EXAMPLE_KINDS];
  const kinds = Array.from({ length: whole(...size.kinds) }, () => {
    const [id = ''] = pool.splice(whole(0, pool.length - 1), 1);
    const scale = 0.6 + whole(0, 8) / 10;
    const kind = exampleKind(id, whole(1, 2), chance(0.5) ? 'contact' : 'outline', whole(0, 9));
    return scaled(everything && chance(0.5) ? withRims(kind, varied ? FINE : COARSE) : kind, scale);
  });
  const pieces = whole(...size.pieces);
  const exactly = chance(0.5);
  const must = everything && chance(0.2) ? whole(0, kinds.length - 1) : -1;
  // Two of a kind of which there may be one alone: then there is no such build.
  const least = varied ? 2 : 1;
  const bases = kinds.flatMap(({ ways }) => ways.map(({ baseMm2 }) => baseMm2));
  return {
    kinds: kinds.map((kind, k) => ({ ...kind, least: k === must ? least : 0 })),
    pieces: { least: exactly ? pieces : 1, most: pieces },
    beside: everything && chance(0.3),
    baseAtMostMm2: chance(0.3) ? (bases[whole(0, bases.length - 1)] ?? null) : null,
    pushAtLeast: chance(0.6) ? Math.tan((whole(2, 28) * Math.PI) / 180) : 0,
    grips: everything && chance(0.3) ? gripsOf(kinds.length, whole) : null,
    goal: everything ? goalOf(whole) : { kind: 'tallest' },
  };
}

/** Rims that are taken for straight pieces where they lie over an edge; by how much nearer those are. */
const withRims = (kind: BestKind, by: number): BestKind => ({
  ...kind,
  ways: kind.ways.map((way) => ({
    ...way,
    topClippedMm: by * way.topInsideMm,
    bottomClippedMm: by * way.bottomInsideMm,
  })),
});

/** Much coarser than any that are used, and as the engine's: 48 corners. */
const COARSE = 0.9;
const FINE = Math.cos(Math.PI / 48);

function scaled(kind: BestKind, by: number): BestKind {
  return {
    ...kind,
    massG: kind.massG * by ** 2,
    mostHeightMm: kind.mostHeightMm * by,
    aloneHeightMm: kind.aloneHeightMm * by,
    ways: kind.ways.map((way) => ({
      ...way,
      heightMm: way.heightMm * by,
      centreHeightMm: way.centreHeightMm * by,
      topInsideMm: way.topInsideMm * by,
      bottomInsideMm: way.bottomInsideMm * by,
      topClippedMm: way.topClippedMm * by,
      bottomClippedMm: way.bottomClippedMm * by,
      baseMm2: way.baseMm2 * by ** 2,
      baseWidthMm: way.baseWidthMm * by,
    })),
  };
}

function gripsOf(kinds: number, whole: (from: number, to: number) => number): BestTask['grips'] {
  const rough = Array.from({ length: kinds }, () => whole(1, 6) / 10);
  return { between: rough.map((upper) => rough.map((lower) => Math.min(upper, lower))), onTable: rough };
}

const GOALS = ['tallest', 'tallest-on-smallest-base', 'tallest-for-width', 'most-points', 'greatest-tilt'] as const;

function goalOf(whole: (from: number, to: number) => number): BestGoal {
  const kind = GOALS[whole(0, GOALS.length - 1)];
  return kind === 'most-points' ? { kind, rows: rowsOf(whole) } : { kind: kind ?? 'tallest' };
}

function rowsOf(whole: (from: number, to: number) => number): PointsRow[] {
  const rounding = (): PointsRow['rounding'] => (['none', 'down', 'nearest', 'up'] as const)[whole(0, 3)] ?? 'none';
  const row = (measure: string, points: number, per: number): PointsRow => ({
    id: measure,
    measure,
    points,
    per,
    rounding: rounding(),
    ...(whole(0, 3) === 0 ? { capPoints: whole(5, 30) } : {}),
    ...(whole(0, 5) === 0 ? { floorPoints: whole(-20, 2) } : {}),
  });
  return [
    row('height', whole(-1, 3), whole(1, 3)),
    row('bonus', whole(-1, 2), whole(1, 3)),
    ...(whole(0, 2) === 0 ? [row('base-area', whole(-2, 1), whole(5, 10))] : []),
  ];
}
