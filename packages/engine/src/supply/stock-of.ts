// What the class has of every kind before anything is earned, by kind id.

import type { Challenge } from '../types.ts';

export const stockOf = ({ kit }: Challenge): Readonly<Record<string, number>> =>
  Object.fromEntries(kit.kinds.map(({ id, stock }) => [id, stock]));
