// The comparison of a seed's stacks as a table: what we say of a stack by what the simulation made of it.

import type { Compared } from './comparison.ts';
import { CLASSES } from './comparison.ts';

export function tableOf(stacks: readonly Compared[]): string {
  const rows = CLASSES.map((said) => {
    const those = stacks.filter((stack) => stack.class === said);
    const left = those.filter(({ simulated }) => simulated.leftItsPose);
    return [said, those.length - left.length, left.length, `${Math.round((100 * those.length) / stacks.length)} %`];
  });
  const [first, ...others] = [['we say', 'kept its pose', 'left its pose', 'share'], ...rows].map((cells) =>
    cells.map((cell, k) => (k === 0 ? String(cell).padEnd(NAME_WIDTH) : String(cell).padStart(FIGURE_WIDTH))).join(''),
  );
  return [first, ...others].join('\n');
}

const NAME_WIDTH = Math.max(...CLASSES.map((name) => name.length));
const FIGURE_WIDTH = 15;
