// Challenges that are ready to run with any kit. Their names are words of the class's language, and are handed in.
// Curriculum codes: Common Core State Standards for Mathematics (NGA and CCSSO 2010) and Next Generation Science
// Standards (NGSS Lead States 2013), as labels that a teacher may change.

import { CONTACT_MM, rulerOf } from '@cairnmark/geometry';
import type { PointsRow, RankingKey, Requirement } from '@cairnmark/scoring';
import { SETS_ID, TILT_ID } from '../facts/ids.ts';
import type { Challenge, GradePreset, Kit } from '../types.ts';
import { presetOf, rulerFor } from './presets.ts';

export const READY_IDS = [
  'tallest',
  'tallest-on-smallest-base',
  'largest-courtyard',
  'most-volume-for-paper',
  'tallest-that-stands-a-tilt',
  'one-of-every-kind',
] as const;
export type ReadyId = (typeof READY_IDS)[number];

/** `pieces`: how many a build may have, where the challenge counts them; null: as many as are usual for it. */
export const readyChallenge = (id: ReadyId, name: string, kit: Kit, pieces: number | null): Challenge =>
  readyChallengeFor(id, name, kit, pieces, { grade: READY[id].grade, units: 'cm' });

/** The same for a class of another grade, or one that measures in inches. */
export function readyChallengeFor(
  id: ReadyId,
  name: string,
  kit: Kit,
  pieces: number | null,
  { grade, units }: { readonly grade: GradePreset; readonly units: 'cm' | 'in' },
): Challenge {
  const { labels, usualPieces, plan } = READY[id];
  const { pi, hidden } = presetOf(grade);
  const ruler = rulerFor(grade, units);
  const { first, tieBreaks = [], points = [], requirements = [] } = plan(pieces ?? usualPieces, rulerOf(ruler).stepMm);
  const asked = new Set([first.by, ...tieBreaks.map(({ by }) => by), ...points.map(({ measure }) => measure)]);
  return {
    id,
    name,
    kit,
    gradePreset: grade,
    ruler,
    counting: 'flat-and-curved-apart',
    base: 'outline-of-pieces-on-table',
    gapAllowanceMm: CONTACT_MM,
    slackMm: SLACK_OF_PAPER_MM,
    heightCounts: ['ruler', 'photo', 'model'],
    measuringErrorMm: READING_ERROR_MM,
    criteria: [],
    points,
    requirements,
    ranking: { first, tieBreaks },
    attemptCounts: 'best',
    fallen: { counts: 'out' },
    own: { pi, closeShare: CLOSE_SHARE, rewards: [] },
    supply: null,
    hidden: hidden.filter((measure) => !asked.has(measure)),
    labels,
  };
}

/** mm; share: what a class starts from. Common practice, no source. */
const SLACK_OF_PAPER_MM = 2;
const READING_ERROR_MM = 3;
const CLOSE_SHARE = 0.05;

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
  readonly plan: (pieces: number, stepMm: number) => Plan;
}

/** rad. 15 degrees: a ramp of 27 cm over a metre. */
const RAMP_RAD = (15 * Math.PI) / 180;
const MM2_PER_CM2 = 100;
/** A tower of five is quickly built; a wall round a courtyard takes a dozen and a few. Common practice, no source. */
const TOWER_PIECES = 5;
const FORT_PIECES = 16;

const READY: Readonly<Record<ReadyId, Ready>> = {
  tallest: {
    grade: 'grades-2-3',
    labels: ['2.MD.A.1', '2.MD.D.9', 'K-2-ETS1-3'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, stepMm) => ({ first: highest(stepMm), requirements: [pieceLimit('exactly', pieces)] }),
  },
  'tallest-on-smallest-base': {
    grade: 'grades-4-5',
    labels: ['3.MD.C.7', '4.MD.A.3', '3-5-ETS1-2'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, stepMm) => ({
      first: { by: 'height-to-width', better: 'more', roundTo: 0.1 },
      tieBreaks: [highest(stepMm), { by: 'base-area', better: 'less', roundTo: MM2_PER_CM2 }],
      requirements: [pieceLimit('at-most', pieces)],
    }),
  },
  'largest-courtyard': {
    grade: 'grades-4-5',
    labels: ['3.MD.C.7', '3.MD.D.8', '3-5-ETS1-2'],
    usualPieces: FORT_PIECES,
    plan: (pieces) => ({
      first: { by: 'courtyard-area', better: 'more', roundTo: MM2_PER_CM2 },
      tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 1 }],
      requirements: [pieceLimit('at-most', pieces)],
    }),
  },
  'most-volume-for-paper': {
    grade: 'grades-6-8',
    labels: ['6.G.A.4', '7.G.B.6', '8.G.C.9'],
    usualPieces: TOWER_PIECES,
    plan: (pieces) => ({
      first: { by: 'volume-per-paper', better: 'more', roundTo: 0.01 },
      tieBreaks: [{ by: 'volume', better: 'more', roundTo: 1000 }],
      requirements: [pieceLimit('at-least', pieces)],
    }),
  },
  'tallest-that-stands-a-tilt': {
    grade: 'grades-6-8',
    labels: ['MS-ETS1-1', 'MS-ETS1-3'],
    usualPieces: TOWER_PIECES,
    plan: (pieces, stepMm) => ({
      first: highest(stepMm),
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
    plan: (_, stepMm) => ({
      first: { by: 'points', better: 'more', roundTo: 1 },
      tieBreaks: [highest(stepMm)],
      points: [
        { id: 'kinds', measure: 'kinds', points: 1, per: 1, rounding: 'none' },
        { id: 'every-kind', measure: SETS_ID, points: 5, per: 1, rounding: 'down', capPoints: 5 },
      ],
    }),
  },
};

const highest = (stepMm: number): RankingKey => ({ by: 'height', better: 'more', roundTo: stepMm });

const pieceLimit = (comparison: 'exactly' | 'at-least' | 'at-most', limit: number): Requirement => ({
  id: 'pieces',
  kind: 'measured',
  measure: 'pieces',
  comparison,
  limit,
  consequence: { kind: 'must' },
});
