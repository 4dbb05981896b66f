// The same questions to HiGHS, a solver for programmes in whole numbers by another hand (in doubles, with tolerances).

import type { EvenTask, FavourTask, LabData } from '@cairnmark/scoring';
import loadHighs from 'highs';

/** The module's types are those of its CommonJS build; what is imported is the loader itself. */
const load = loadHighs as unknown as typeof loadHighs.default;
const highs = await load();

export type HighsRule = { readonly rows: number; readonly sum: number };

/** The rule with fewest rows, then the smallest sum; or with the smallest sum alone. null: there is none. */
export function ruleByHighs(task: FavourTask, order: 'fewest-rows' | 'smallest-sum'): HighsRule | null {
  const solved = highs.solve(programmeText(task, order), { output_flag: false });
  if (solved.Status === 'Infeasible') return null;
  if (solved.Status !== 'Optimal') throw new Error(solved.Status);
  const rates = task.data.rows.map((_, j) => valueOf(solved.Columns, `p${j}`) - valueOf(solved.Columns, `n${j}`));
  return {
    rows: rates.filter((rate) => rate !== 0).length,
    sum: rates.reduce((sum, rate) => sum + Math.abs(rate), 0),
  };
}

const valueOf = (columns: Readonly<Record<string, unknown>>, name: string): number => {
  const column = columns[name] as { readonly Primal: number } | undefined;
  return Math.round(column?.Primal ?? 0);
};

/** As a programme in the LP format of CPLEX; `u` says whether a row is used. */
function programmeText({ data, favourite, lead, most, negative }: FavourTask, order: string): string {
  const own = data.kinds.find(({ id }) => id === favourite)!.measures;
  const columns = own.flatMap((_, j) => (negative ? [`p${j}`, `n${j}`] : [`p${j}`]));
  const used = own.map((_, j) => `u${j}`);
  // More than all rates together can come to.
  const row = order === 'fewest-rows' ? 2 * most * own.length + 1 : 0;
  const leads = data.kinds
    .filter(({ id }) => id !== favourite)
    .map(({ measures }) => {
      const more = own.map((count, j) => count - measures[j]!);
      const terms = more.flatMap((count, j) => [term(count, `p${j}`), ...(negative ? [term(-count, `n${j}`)] : [])]);
      return `${terms.join(' ')} >= ${lead}`;
    });
  const limits = own.map((_, j) => `p${j} ${negative ? `+ n${j} ` : ''}- ${most} u${j} <= 0`);
  return [
    'Minimize',
    `obj: ${[...columns.map((name) => term(1, name)), ...used.map((name) => term(row, name))].join(' ')}`,
    'Subject To',
    ...[...leads, ...limits].map((line, k) => `c${k}: ${line}`),
    'Bounds',
    ...columns.map((name) => `0 <= ${name} <= ${most}`),
    'Generals',
    columns.join(' '),
    'Binaries',
    used.join(' '),
    'End',
  ].join('\n');
}

const term = (count: number, name: string): string => `${count < 0 ? '-' : '+'} ${Math.abs(count)} ${name}`;

/** The greatest share of the lowest in the highest, without rates below 0: Dinkelbach's steps with HiGHS for each. */
export function evenByHighs({ data, most }: EvenTask): number {
  let share = 0;
  for (;;) {
    const solved = highs.solve(fairerText(data, most, share), { output_flag: false });
    if (solved.Status === 'Infeasible') return share;
    if (solved.Status !== 'Optimal') throw new Error(solved.Status);
    const rates = data.rows.map((_, j) => valueOf(solved.Columns, `p${j}`));
    const scores = data.kinds.map(({ measures }) => measures.reduce((sum, count, j) => sum + count * rates[j]!, 0));
    const next = Math.min(...scores) / Math.max(...scores);
    if (!(next > share + STEP)) return share;
    share = next;
  }
}

/** Two shares of scores up to some hundreds differ by more, if at all. */
const STEP = 1e-7;

/** The lowest less `share` of the highest, as much as can be. */
function fairerText({ rows, kinds }: LabData, most: number, share: number): string {
  const columns = rows.map((_, j) => `p${j}`);
  const earned = (measures: readonly number[]): string => measures.map((count, j) => term(count, `p${j}`)).join(' ');
  const lines = [
    ...kinds.flatMap(({ measures }) => [`${earned(measures)} - low >= 0`, `${earned(measures)} - high <= 0`]),
    'high >= 1',
  ];
  return [
    'Maximize',
    `obj: low - ${share} high`,
    'Subject To',
    ...lines.map((line, k) => `c${k}: ${line}`),
    'Bounds',
    ...columns.map((name) => `0 <= ${name} <= ${most}`),
    'Generals',
    columns.join(' '),
    'End',
  ].join('\n');
}
