// The worked cases of the points lab (tests/corpus/points-examples.json) as the lab takes them: kinds by rows.

import type { LabData } from '@cairnmark/scoring';
import file from '../../corpus/points-examples.json' with { type: 'json' };

export type ExampleKind = keyof typeof file.kinds;
export type ExampleRow = keyof (typeof file.kinds)['cube']['measures'];

export const EXAMPLES = file;

/** A kit of the file's kinds under some of its rows. */
export const exampleData = (kit: readonly string[], rows: readonly string[]): LabData => ({
  rows,
  kinds: kit.map((id) => {
    const { measures, surface, minutesInvented } = file.kinds[id as ExampleKind];
    return {
      id,
      measures: rows.map((row) => measures[row as ExampleRow]),
      paperMm2: 100 * surface,
      minutes: minutesInvented,
    };
  }),
});
