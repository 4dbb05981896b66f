// The rows of a riddle: what pupils count on a piece in their hands, and nothing that is measured.

import type { LabData } from '@cairnmark/scoring';
import type { LabRow } from './lab-kit.ts';

export function countedRows({ rows, kinds }: LabData, all: readonly LabRow[]): LabData {
  const counted = all.flatMap(({ per }, j) => (per === 1 ? [j] : []));
  return {
    rows: counted.map((j) => rows[j] ?? ''),
    kinds: kinds.map((kind) => ({ ...kind, measures: counted.map((j) => kind.measures[j] ?? 0) })),
  };
}
