// From what is ticked in Find points to a task of the points lab.

import { withRows } from '@cairnmark/engine';
import type { EvenPer, EvenTask, FavourTask, LabData } from '@cairnmark/scoring';
import type { Cost, Lab } from './lab.ts';

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

export const evenTask = (data: LabData, { most, negative, rows }: Wish, cost: Cost): EvenTask => ({
  data: withRows(data, (row) => rows.includes(row)),
  goal: 'share',
  per: PER[cost],
  most,
  negative,
  step: 1,
});

/** What is to be even: what the bars are held against, as long as the minutes of every solid are told. */
export const evenCost = ({ cost, kit }: Pick<Lab, 'cost' | 'kit'>): Cost =>
  cost === 'minutes' && kit.data.kinds.some(({ minutes }) => minutes === null) ? 'piece' : cost;

const PER: Readonly<Record<Cost, EvenPer>> = { piece: 'piece', paper: '100-cm2', minutes: '10-minutes' };

/** The rows that the task leaves out. */
export const furtherRows = (data: LabData, { rows }: Wish): LabData => withRows(data, (row) => !rows.includes(row));
