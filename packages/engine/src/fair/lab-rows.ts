// For what one piece by itself can earn points: what is counted on it in the class's way, its height, its paper, its volume,
// and whatever else of a piece the challenge gives points for.

import type { CountingConvention, MeasureId, Ruler } from '@cairnmark/geometry';
import { MM_PER_CM, MM_PER_INCH } from '@cairnmark/geometry';
import type { PointsRow } from '@cairnmark/scoring';

/** Something that points are given for: a measure of a build that is a sum over its pieces, or the height of one that stands. */
export interface LabRow {
  readonly id: MeasureId;
  /** mm, mm2 or mm3; 1 for what is counted. Only whole ones count. */
  readonly per: number;
}

/**
 * What is counted comes first. Heights go by whole cm or inches, paper and volume by 10 cm2 and 10 cm3, or one inch: small
 * pieces have some of them, and the numbers stay small. Where the challenge has a row of its own on it, by the `per` of that.
 */
export function labRows(
  points: readonly PointsRow[],
  counting: CountingConvention,
  { unit }: Pick<Ruler, 'unit'>,
): readonly LabRow[] {
  const long = unit === 'in' ? MM_PER_INCH : MM_PER_CM;
  const many = unit === 'in' ? 1 : TEN;
  const usual: readonly LabRow[] = [
    ...COUNTED[counting].map((id) => ({ id, per: 1 })),
    { id: 'height', per: long },
    { id: 'volume', per: many * long ** 3 },
    { id: 'paper', per: many * long ** 2 },
  ];
  const own = OF_A_PIECE.filter((id) => points.some(({ measure }) => measure === id));
  const further = own.filter((id) => !usual.some((row) => row.id === id));
  const perOf = ({ id, per }: LabRow): number => points.find(({ measure }) => measure === id)?.per ?? per;
  return [...usual, ...further.map((id) => ({ id, per: 1 }))].map((row) => ({ ...row, per: perOf(row) }));
}

const TEN = 10;

const COUNTED: Readonly<Record<CountingConvention, readonly MeasureId[]>> = {
  'flat-only': ['faces', 'edges', 'corners'],
  'flat-and-curved-apart': ['faces', 'curved-surfaces', 'edges', 'corners'],
  'all-surfaces': ['faces', 'edges', 'corners'],
};

/** Measures of a build to which each piece adds its own part, besides those above. */
const OF_A_PIECE: readonly MeasureId[] = [
  'pieces',
  'flat-faces',
  'curved-surfaces',
  'straight-edges',
  'curved-edges',
  'vertices',
  'faces',
  'edges',
  'corners',
  'height',
  'volume',
  'paper',
];

/** Rows that pupils count on a piece in their hands; that there is one piece is no such row. */
export const isCountedRow = ({ id, per }: LabRow): boolean => per === 1 && !UNCOUNTED.includes(id);

const UNCOUNTED: readonly MeasureId[] = ['pieces', 'height', 'volume', 'paper'];
