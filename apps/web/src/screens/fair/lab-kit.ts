// A kit as the points lab sees it: for what one piece can earn points, and how often each kind has it.

import type { Challenge, KindOfPiece } from '@cairnmark/engine';
import type { CountingConvention, MeasureId, Ruler, Solid } from '@cairnmark/geometry';
import { MM_PER_CM, MM_PER_INCH, makeSolid, schoolCounts } from '@cairnmark/geometry';
import type { LabData, PointsRow } from '@cairnmark/scoring';

/** Something that points are given for. Its measure is a sum over pieces, or the height of a piece that stands. */
export interface LabRow {
  readonly id: MeasureId;
  /** mm, mm2 or mm3; 1 for what is counted. Only whole ones count. */
  readonly per: number;
}

export interface LabKit {
  readonly rows: readonly LabRow[];
  readonly data: LabData;
  readonly kinds: readonly KindOfPiece[];
  /** By kind id; a kind whose sizes do not fit together is left out everywhere. */
  readonly solids: ReadonlyMap<string, Solid>;
}

/** `minutes`: to fold one piece, by kind id. */
export function labKit(
  { kit, points }: Challenge,
  counting: CountingConvention,
  ruler: Ruler,
  minutes: Readonly<Record<string, number>>,
): LabKit {
  const solids = new Map(
    kit.kinds.flatMap(({ id, solid }) => {
      const made = makeSolid(solid);
      return made.ok ? [[id, made.value] as const] : [];
    }),
  );
  const rows = rowsOf(counting, ruler).map((row) => {
    const own = points.find(({ measure }) => measure === row.id);
    return own === undefined ? row : { ...row, per: own.per };
  });
  const kinds = kit.kinds.filter(({ id }) => solids.has(id));
  const data = {
    rows: rows.map(({ id }) => id),
    kinds: kinds.flatMap(({ id }) => {
      const solid = solids.get(id);
      if (solid === undefined) return [];
      return [
        {
          id,
          measures: rows.map((row) => Math.floor(measureOf(solid, row.id, counting) / row.per + WHOLE)),
          paperMm2: solid.surfaceMm2,
          minutes: minutes[id] ?? null,
        },
      ];
    }),
  };
  return { rows, data, kinds, solids };
}

/** The rates that the challenge has for these rows, and its measures that one piece by itself has nothing of. */
export function todaysRates(
  { points }: Challenge,
  rows: readonly LabRow[],
): { readonly rates: readonly number[]; readonly others: readonly string[] } {
  const rates = rows.map(({ id, per }) =>
    points.reduce((sum, row) => (row.measure === id ? sum + (row.points * per) / row.per : sum), 0),
  );
  const others = points.filter(({ measure }) => !rows.some(({ id }) => id === measure)).map(({ measure }) => measure);
  return { rates, others: [...new Set(others)] };
}

/** The points table of these rates; a row of 0 points is left out. */
export const pointsTable = (rows: readonly LabRow[], rates: readonly number[]): readonly PointsRow[] =>
  rows.flatMap(({ id, per }, j): readonly PointsRow[] => {
    const points = rates[j] ?? 0;
    return points === 0 ? [] : [{ id, measure: id, points, per, rounding: per === 1 ? 'none' : 'down' }];
  });

/** No unit: what a whole number of steps may lack after arithmetic in doubles. */
const WHOLE = 1e-9;

function rowsOf(counting: CountingConvention, ruler: Ruler): readonly LabRow[] {
  const long = ruler.unit === 'in' ? MM_PER_INCH : MM_PER_CM;
  const many = ruler.unit === 'in' ? 1 : TEN;
  const counts: readonly MeasureId[] =
    counting === 'flat-and-curved-apart'
      ? ['faces', 'curved-surfaces', 'edges', 'corners']
      : ['faces', 'edges', 'corners'];
  return [
    ...counts.map((id) => ({ id, per: 1 })),
    { id: 'height', per: long },
    { id: 'volume', per: many * long ** 3 },
    { id: 'paper', per: many * long ** 2 },
  ];
}

/** Of cm2 and cm3: small pieces have some of them, and the numbers stay small. */
const TEN = 10;

function measureOf(solid: Solid, id: MeasureId, counting: CountingConvention): number {
  const { faces, edges, corners } = schoolCounts(solid.counts, counting);
  switch (id) {
    case 'faces':
      return faces;
    case 'curved-surfaces':
      return solid.counts.curvedSurfaces;
    case 'edges':
      return edges;
    case 'corners':
      return corners;
    case 'height':
      return solid.restings[0]?.heightMm ?? 0;
    case 'volume':
      return solid.volumeMm3;
    case 'paper':
      return solid.surfaceMm2;
    default:
      throw new RangeError(`no row for ${id}`);
  }
}
