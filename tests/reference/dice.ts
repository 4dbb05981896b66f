// Seeded choices for families of test cases.

import { seeded } from './seeded.ts';

export interface Dice {
  readonly between: (low: number, high: number) => number;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  readonly oneOf: <T>(choices: readonly T[]) => T;
}

export function diceOf(seed: number): Dice {
  const draw = seeded(seed);
  // Seeds near each other begin alike: the first draws are thrown away.
  for (let k = 0; k < 5; k += 1) draw();
  const pick = (count: number): number => Math.floor(count * draw());
  return {
    between: (low, high) => low + (high - low) * draw(),
    whole: (low, high) => low + pick(high - low + 1),
    oneOf: (choices) => choices[pick(choices.length)]!,
  };
}

export const times = <T>(count: number, make: (k: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, k) => make(k));
