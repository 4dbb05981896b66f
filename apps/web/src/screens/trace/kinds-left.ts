// How many of each kind of the kit are not traced yet: pieces count, and so do shapes of which somebody said which piece they are.

import type { Bench } from '@cairnmark/editing';
import { stockLeft } from '@cairnmark/editing';
import type { Tracing } from './tracing.ts';

/** By the ids of the kinds; none is below 0. */
export function kindsLeft(
  { pieces, shapes }: Pick<Tracing, 'pieces' | 'shapes'>,
  bench: Bench,
): ReadonlyMap<string, number> {
  const left = stockLeft(
    pieces.map(({ laid }) => laid),
    bench,
  );
  const used = (id: string): number => shapes.filter(({ kind }) => kind === id).length;
  return new Map([...left].map(([id, count]) => [id, Math.max(0, count - used(id))]));
}
