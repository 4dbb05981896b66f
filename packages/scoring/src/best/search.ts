// Branch and bound from the top of the tower down. A tower that cannot beat the best found, or that another one of the same
// pieces is no worse than in every way that matters below, is not gone on with. Work is counted in pieces tried.

import type { Spend } from './beside-points.ts';
import { dominance } from './dominance.ts';
import type { Placed } from './placing.ts';
import { placeUnder } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import { needsFit } from './room-below.ts';
import { SAME_VALUE } from './tolerance.ts';
import type { BestProgress } from './types.ts';

/** A finished build: the tower, what stands beside it, and its value. */
export interface Finished {
  readonly placed: Placed;
  readonly beside: readonly WayOf[];
  readonly value: number;
}

/** What is sought. */
export interface Aim {
  /** The ways up in the order in which they are tried. */
  readonly ways: readonly WayOf[];
  /**
   * The tower set on the table; null when the rules do not allow it, or when it has no greater value than `above`. What it
   * looks at beside the tower it counts by `spend`, and stops when that says false.
   */
  readonly finish: (placed: Placed, used: readonly number[], above: number, spend: Spend) => Finished | null;
  /** No tower that goes on below has a greater value. */
  readonly boundBelow: (placed: Placed, used: readonly number[]) => number;
  /** What of a tower matters to its value beside its pieces. */
  readonly matters: { readonly height: 'more' | 'less' | 'same' | 'no'; readonly push: boolean };
  /** Only a greater value than this is of use. */
  readonly above: number;
}

export interface Outcome {
  readonly best: Finished | null;
  /** No tower has a greater value; the best's own when the search was finished. */
  readonly noMoreThan: number;
  readonly finished: boolean;
  readonly looked: number;
}

/** Pieces tried between two words of progress. */
const PACE = 5_000;

interface Frame {
  readonly placed: Placed | null;
  readonly used: readonly number[];
  readonly bound: number;
  next: number;
}

/** How much work is left, and how much was done before: progress goes on counting from there. */
export interface Work {
  /** Pieces that may be tried. */
  readonly limit: number;
  readonly before: number;
}

/** `looked` of the outcome is this search's own. */
export function* search(prepared: Prepared, aim: Aim, { limit, before }: Work): Generator<BestProgress, Outcome> {
  const isWorse = dominance(prepared, aim.matters);
  const fits = needsFit(prepared);
  const stack: Frame[] = [
    { placed: null, used: prepared.stock.map(() => 0), bound: Number.POSITIVE_INFINITY, next: 0 },
  ];
  let best: Finished | null = null;
  let [looked, told, isCut] = [0, PACE, false];
  const spend: Spend = () => {
    isCut ||= looked >= limit;
    if (!isCut) looked += 1;
    return !isCut;
  };
  const enough = (): number => beyond(best?.value ?? aim.above);
  for (let frame = stack.at(-1); frame !== undefined; frame = stack.at(-1)) {
    const way = frame.bound > enough() ? aim.ways[frame.next] : undefined;
    if (way === undefined) {
      stack.pop();
      continue;
    }
    frame.next += 1;
    if ((frame.used[way.kind] ?? 0) >= (prepared.stock[way.kind] ?? 0)) continue;
    if (spend() && looked >= told) {
      told = looked + PACE;
      yield { looked: before + looked, value: best?.value ?? null };
    }
    if (isCut) return { best, noMoreThan: Math.max(...stack.map(({ bound }) => bound)), finished: false, looked };
    const placed = placeUnder(frame.placed, way, prepared);
    if (placed === null) continue;
    const used = frame.used.map((count, kind) => (kind === way.kind ? count + 1 : count));
    if (!fits(placed, used)) continue;
    const finished = aim.finish(placed, used, enough(), spend);
    if (finished !== null && finished.value > enough()) best = finished;
    const bound = aim.boundBelow(placed, used);
    if (bound > enough() && !isWorse(placed, used)) stack.push({ placed, used, bound, next: 0 });
  }
  // Cut while sets beside the last tower were tried: any may be better.
  if (isCut) return { best, noMoreThan: Number.POSITIVE_INFINITY, finished: false, looked };
  return { best, noMoreThan: best?.value ?? aim.above, finished: true, looked };
}

/** More than this is more, not rounding. */
const beyond = (value: number): number => (Number.isFinite(value) ? value + Math.abs(value) * SAME_VALUE : value);

/** What is left when so much more was tried. */
export const after = ({ limit, before }: Work, looked: number): Work => ({
  limit: limit - looked,
  before: before + looked,
});
