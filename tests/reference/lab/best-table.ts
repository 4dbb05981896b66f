// The best possible build, by trying every order of pieces and every way up.

import type { Compared } from './best-tried.ts';
import { compared } from './best-tried.ts';

const KITS = 600;

export const title = `The best possible build, ${KITS} kits of seeds 1 to ${KITS}, against all orders and ways up`;

export function table(share: number): string {
  const all = Array.from({ length: Math.ceil(share * KITS) }, (_, k) => compared(k + 1));
  const goals = [...new Set(all.map(({ goal }) => goal))].sort();
  const rows = [
    ['sought', 'kits', 'best of any', 'of centred', 'none', 'wrong', 'towers tried'],
    ...goals.map((goal) =>
      rowOf(
        goal,
        all.filter((one) => one.goal === goal),
      ),
    ),
    rowOf('all', all),
  ];
  const widths = rows[0]?.map((_, k) => Math.max(...rows.map((row) => row[k]?.length ?? 0))) ?? [];
  return rows
    .map((row) => row.map((cell, k) => (k === 0 ? cell.padEnd(widths[k] ?? 0) : cell.padStart((widths[k] ?? 0) + 2))))
    .map((cells) => cells.join(''))
    .join('\n');
}

function rowOf(label: string, some: readonly Compared[]): readonly string[] {
  const count = (which: (one: Compared) => boolean): string => `${some.filter(which).length}`;
  return [
    label,
    `${some.length}`,
    count(({ outcome }) => outcome === 'any'),
    count(({ outcome }) => outcome === 'centred'),
    count(({ outcome }) => outcome === 'none'),
    count(({ agree }) => !agree),
    `${some.reduce((sum, { towers }) => sum + towers, 0)}`,
  ];
}
