// Points that favour a kind, by trying all points.

import { answersText } from './answers-text.ts';
import { comparedFavour } from './compared-favour.ts';
import { FAVOUR_TASKS, favourTasks } from './tasks.ts';

const { seed, count } = FAVOUR_TASKS;

export const title = `Points that favour a kind, ${count} tasks of seed ${seed}, against all points there are`;

export function table(share: number): string {
  return answersText(favourTasks(seed, Math.ceil(share * count)).map(comparedFavour));
}
