// What judges marked, criterion by criterion.

import type { Criterion, Mark } from '@cairnmark/engine';

export interface Marked {
  readonly criterion: Criterion;
  readonly marks: readonly Mark[];
  /** null: nobody marked it yet. */
  readonly mean: number | null;
}

export function markedCriteria(criteria: readonly Criterion[], judged: readonly Mark[]): readonly Marked[] {
  return criteria.map((criterion) => {
    const marks = judged.filter((one) => one.criterion === criterion.id);
    const sum = marks.reduce((total, { mark }) => total + mark, 0);
    return { criterion, marks, mean: marks.length === 0 ? null : sum / marks.length };
  });
}

/** The mark of one judge; null: none yet. */
export const markOf = (judged: readonly Mark[], judge: string, criterion: string): number | null =>
  judged.find((one) => one.judge === judge && one.criterion === criterion)?.mark ?? null;
