// Seeded tasks of the lab: kits and rows drawn from the worked cases' solids.

import type { EvenTask, FavourTask, LabData } from '@cairnmark/scoring';
import { seeded } from '../seeded.ts';
import { EXAMPLES, exampleData } from './examples.ts';

/** The family that tests, the table and the docs tell of. */
export const FAVOUR_TASKS = { seed: 71993, count: 700 } as const;
export const EVEN_TASKS = { seed: 52163, count: 100 } as const;
export const HIGHS_TASKS = { seed: 38851, count: 500 } as const;

const KINDS = Object.keys(EXAMPLES.kinds);
const ROWS = Object.keys(EXAMPLES.rows);
const COUNTS = ['F', 'E', 'V', 'Ff', 'Cs', 'Se', 'Ce', 'Vx'];

/** 3 to 9 kinds, 2 to 5 rows; boxes of at most 20 000 rules, so that all of them can be tried. */
export function favourTasks(seed: number, count: number): readonly FavourTask[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const data = drawnData(random, [3, 9], [2, 5]);
    const negative = random() < 0.4;
    return {
      data,
      favourite: data.kinds[wholeFrom(random, 0, data.kinds.length - 1)]!.id,
      lead: wholeFrom(random, 0, 2) > 0 ? 1 : wholeFrom(random, 2, 7),
      most: mostOf(data.rows.length, negative),
      negative,
      step: 1,
    };
  });
}

/** Both goals by turns, every third with rates below 0. */
export function evenTasks(seed: number, count: number): readonly EvenTask[] {
  const random = seeded(seed);
  return Array.from({ length: count }, (_, k) => {
    const data = drawnData(random, [3, 9], [2, 5]);
    const negative = k % 3 === 2;
    return {
      data,
      goal: k % 2 === 0 ? 'share' : 'gap',
      per: 'piece',
      most: mostOf(data.rows.length, negative),
      negative,
      step: 1,
    };
  });
}

/** Larger than can be tried: 5 to 15 kinds, 3 to 8 rows, rates up to 20. */
export function largeTasks(seed: number, count: number): readonly FavourTask[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const data = drawnData(random, [5, 15], [3, 8]);
    return {
      data,
      favourite: data.kinds[wholeFrom(random, 0, data.kinds.length - 1)]!.id,
      lead: wholeFrom(random, 1, 6),
      most: wholeFrom(random, 5, 20),
      negative: random() < 0.4,
      step: 1,
    };
  });
}

/** Of one size, for the bench. */
export function kitOf(random: () => number, kinds: number, rows: number): LabData {
  return drawnData(random, [kinds, kinds], [rows, rows]);
}

type Span = readonly [least: number, most: number];

function drawnData(random: () => number, kinds: Span, rows: Span): LabData {
  const from = random() < 0.5 ? COUNTS : ROWS;
  const wanted = Math.min(from.length, wholeFrom(random, ...rows));
  return exampleData(drawn(random, KINDS, wholeFrom(random, ...kinds)), drawn(random, from, wanted));
}

export function drawn<T>(random: () => number, from: readonly T[], count: number): readonly T[] {
  const left = [...from];
  return Array.from({ length: count }, () => left.splice(wholeFrom(random, 0, left.length - 1), 1)[0]!);
}

const wholeFrom = (random: () => number, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));

/** Rates in the box: 10 201 to 16 807 rules of two to five rows; with rates below 0, 9 261 to 19 683. */
const mostOf = (rows: number, negative: boolean): number => (negative ? [50, 10, 5, 3] : [100, 20, 10, 6])[rows - 2]!;
