// What each ready challenge is about: its grade, how it ranks, what earns points, what a build must keep to.
// Curriculum codes: Common Core State Standards for Mathematics (NGA and CCSSO 2010) and Next Generation Science
// Standards (NGSS Lead States 2013), as labels that a teacher may change.

import type { PointsRow, RankingKey, Requirement } from '@cairnmark/scoring';
import { SETS_ID, TILT_ID } from '../facts/ids.ts';
import type { GradePreset } from '../types.ts';

export const READY_IDS = [
  'tallest',
  'tallest-on-smallest-base',
  'largest-courtyard',
  'most-volume-for-paper',
  'tallest-that-stands-a-tilt',
  'one-of-every-kind',
] as const;
export type ReadyId = (typeof READY_IDS)[number];

interface Plan {
  readonly first: RankingKey;
  readonly tieBreaks?: readonly RankingKey[];
  readonly points?: readonly PointsRow[];
  readonly requirements?: readonly Requirement[];
}

interface Ready {
  readonly grade: GradePreset;
  readonly labels: readonly string[];
  readonly usualPieces: number;
  readonly plan: (pieces: number, steps: Steps) => Plan;
}

/** What values are rounded to before they are compared: lengths as the ruler reads, areas and volumes in whole units. */
interface Steps {
  readonly lengthMm: number;
  /** 1 cm, or 1 inch. */
  readonly unitMm: number;
}

/** rad. 15 degrees: a ramp of 27 cm over a metre. */
const RAMP_RAD = (15 * Math.PI) / 180;
/** A tower of five is quickly built; a wall round a courtyard takes a dozen and a few. Common practice, no source. */
const TOWER_PIECES = 5;
const FORT_PIECES = 16;

export const READY: Readonly<Record<ReadyId, Ready>> = {
  tallest: {
    grade: 'grades-2-3',
    labels: ['2.MD.A.1', '2.MD.D.9', 'K-2-ETS1-3'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, steps) => ({ first: highest(steps), requirements: [pieceLimit('exactly', pieces)] }),
  },
  'tallest-on-smallest-base': {
    grade: 'grades-4-5',
    labels: ['3.MD.C.7', '4.MD.A.3', '3-5-ETS1-2'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, steps) => ({
      first: { by: 'height-to-width', better: 'more', roundTo: 0.1 },
      tieBreaks: [highest(steps), { by: 'base-area', better: 'less', roundTo: steps.unitMm ** 2 }],
      requirements: [pieceLimit('at-most', pieces)],
    }),
  },
  'largest-courtyard': {
    grade: 'grades-4-5',
    labels: ['3.MD.C.7', '3.MD.D.8', '3-5-ETS1-2'],
    usualPieces: FORT_PIECES,
    plan: (pieces, { unitMm }) => ({
      first: { by: 'courtyard-area', better: 'more', roundTo: unitMm ** 2 },
      tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 1 }],
      requirements: [pieceLimit('at-most', pieces)],
    }),
  },
  'most-volume-for-paper': {
    grade: 'grades-6-8',
    labels: ['6.G.A.4', '7.G.B.6', '8.G.C.9'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, { unitMm }) => ({
      first: { by: 'volume-per-paper', better: 'more', roundTo: 0.01 },
      tieBreaks: [{ by: 'volume', better: 'more', roundTo: unitMm ** 3 }],
      requirements: [pieceLimit('at-least', pieces)],
    }),
  },
  'tallest-that-stands-a-tilt': {
    grade: 'grades-6-8',
    labels: ['MS-ETS1-1', 'MS-ETS1-3'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, steps) => ({
      first: highest(steps),
      requirements: [
        pieceLimit('at-most', pieces),
        {
          id: 'ramp',
          kind: 'measured',
          measure: TILT_ID,
          comparison: 'at-least',
          limit: RAMP_RAD,
          consequence: { kind: 'must' },
        },
      ],
    }),
  },
  'one-of-every-kind': {
    grade: 'grades-2-3',
    labels: ['2.G.A.1', 'K-2-ETS1-2'],
    usualPieces: TOWER_PIECES,
    plan: (_, steps) => ({
      first: { by: 'points', better: 'more', roundTo: 1 },
      tieBreaks: [highest(steps)],
      points: [
        { id: 'kinds', measure: 'kinds', points: 1, per: 1, rounding: 'none' },
        { id: 'every-kind', measure: SETS_ID, points: 5, per: 1, rounding: 'down', capPoints: 5 },
      ],
    }),
  },
};

const highest = ({ lengthMm }: Steps): RankingKey => ({ by: 'height', better: 'more', roundTo: lengthMm });

const pieceLimit = (comparison: 'exactly' | 'at-least' | 'at-most', limit: number): Requirement => ({
  id: 'pieces',
  kind: 'measured',
  measure: 'pieces',
  comparison,
  limit,
  consequence: { kind: 'must' },
});
