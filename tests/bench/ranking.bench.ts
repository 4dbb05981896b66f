// Ranking, held against merely sorting: places, ties by rounded values in exact arithmetic, a tie-break and the marks of
// near neighbours cost so many times a sort of the same builds by their height. Seeded heights in mm.

import type { Entry, RankingRule } from '@cairnmark/scoring';
import { rank } from '@cairnmark/scoring';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'Ranking groups: times the work of sorting them';

const RULE: RankingRule = {
  first: { by: 'height', better: 'more', roundTo: 1 },
  tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 }],
};
const GROUPS = 10_000;
const ROUNDS = 15;

export async function run(report: Report): Promise<void> {
  const entries = entriesOf(GROUPS);
  const times = interleave(
    {
      rank: () => rank(entries, RULE),
      sort: () => [...entries].sort((a, b) => heightOf(b) - heightOf(a)),
    },
    ROUNDS,
  );
  report({ label: `${GROUPS} groups`, value: times.rank / times.sort, unit: 'x', target: 'under 10' });
}

/** Groups whose heights lie 100 mm apart on average, each with an error of 3 mm: about one in twelve is near another. */
function entriesOf(groups: number): Entry[] {
  let state = 4301;
  const next = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return Array.from({ length: groups }, (_, k): Entry => {
    const height = { id: 'height', value: next() * groups * 100, unit: 'mm', tolerance: 3, errors: {} };
    const pieces = { id: 'pieces', value: 3 + Math.floor(next() * 5), unit: 'count', tolerance: 0, errors: {} };
    const values = new Map([
      ['height', height],
      ['pieces', pieces],
    ]);
    return { group: `group-${k}`, values, out: [] };
  });
}

const heightOf = ({ values }: Entry): number => values.get('height')?.value ?? 0;
