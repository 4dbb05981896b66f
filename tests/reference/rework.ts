// A working done again with the class's own value of pi, line by line, as a pupil with a calculator would.

import type { Step } from '@cairnmark/geometry';
import { evaluate } from '@cairnmark/geometry';

/** The result of the last line. */
export function rework(steps: readonly Step[], pi: number): number {
  const known: Record<string, number> = {};
  let result = Number.NaN;
  for (const { symbol, formula, inputs } of steps) {
    const values = Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, known[name] ?? value]));
    result = evaluate(formula, values, pi);
    known[symbol] = result;
  }
  return result;
}
