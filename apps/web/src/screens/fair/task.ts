// From what is ticked in Find points to a task of the points lab.

import type { EvenTask, FavourTask, LabData } from '@cairnmark/scoring';

export interface Wish {
  readonly what: 'favour' | 'even';
  /** Id of the kind to favour. */
  readonly favourite: string;
  readonly lead: number;
  readonly most: number;
  readonly negative: boolean;
  /** Ids of the rows that may count. */
  readonly rows: readonly string[];
}

export const favourTask = (data: LabData, { favourite, lead, most, negative, rows }: Wish): FavourTask => ({
  data: withRows(data, (row) => rows.includes(row)),
  favourite,
  lead,
  most,
  negative,
  step: 1,
});

export const evenTask = (data: LabData, { most, negative, rows }: Wish): EvenTask => ({
  data: withRows(data, (row) => rows.includes(row)),
  goal: 'share',
  per: 'piece',
  most,
  negative,
  step: 1,
});

/** The rows that the task leaves out. */
export const furtherRows = (data: LabData, { rows }: Wish): LabData => withRows(data, (row) => !rows.includes(row));

function withRows({ rows, kinds }: LabData, keep: (row: string) => boolean): LabData {
  const kept = rows.flatMap((row, j) => (keep(row) ? [j] : []));
  return {
    rows: kept.map((j) => rows[j] ?? ''),
    kinds: kinds.map((kind) => ({ ...kind, measures: kept.map((j) => kind.measures[j] ?? 0) })),
  };
}
