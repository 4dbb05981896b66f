// Even points, by trying all points.

import { answersText } from './answers-text.ts';
import { comparedEven } from './compared-even.ts';
import { EVEN_TASKS, evenTasks } from './tasks.ts';

const { seed, count } = EVEN_TASKS;

export const title = `As even as can be, ${count} kits of seed ${seed}, against all points there are`;

export function table(share: number): string {
  return answersText(evenTasks(seed, Math.ceil(share * count)).map(comparedEven));
}
