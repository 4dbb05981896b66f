// The points table of a challenge, with the columns of the Challenge screen; those for limits only where a row has one.

import type { PointsRow } from '@cairnmark/scoring';
import type { Block, Column } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';

export function pointsTable(
  rows: readonly PointsRow[],
  size: TextSize,
  { inClass, say, sayPlan, words }: SheetContext,
): Block {
  const count = (value: number): string => words.words.counted('points', value);
  const limits = LIMITS.filter(({ of }) => rows.some((row) => row[of] !== undefined));
  return {
    kind: 'table',
    rules: 'grid',
    size,
    columns: [
      { share: 1.6 },
      { share: 1 },
      { share: 1.3 },
      ...Array.from({ length: 1 + limits.length }, (): Column => ({ share: 1 })),
    ],
    head: [
      sayPlan('challenge.measure'),
      sayPlan('challenge.row-points'),
      sayPlan('challenge.per'),
      sayPlan('challenge.rounding'),
      ...limits.map(({ name }) => sayPlan(name)),
    ],
    rows: rows.map((row) => ({
      cells: [
        words.words.capital(inClass.label(row.measure)),
        count(row.points),
        perText(row),
        sayPlan(`challenge.rounded-${row.rounding}`),
        ...limits.map(({ of }) => limitText(row[of])),
      ],
    })),
  };

  /** A mark of 2 is twice one mark; "1 of 4" would be read as a quarter. */
  function perText({ measure, per }: PointsRow): string {
    if (!measure.startsWith(JUDGED)) return inClass.exactAmount(measure, per);
    return per === 1 ? say('print.rules-one-mark') : say('print.rules-marks', { count: words.words.number(per) });
  }

  function limitText(value: number | undefined): string {
    return value === undefined ? sayPlan('challenge.no-limit') : count(value);
  }
}

/** What the fact ids of marks begin with. */
const JUDGED = 'judged:';

const LIMITS = [
  { of: 'capPoints', name: 'challenge.cap' },
  { of: 'floorPoints', name: 'challenge.floor' },
] as const;
