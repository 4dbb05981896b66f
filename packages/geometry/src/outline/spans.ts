// Stretches of an edge as a list of spans in rising order, apart from each other. Units as the places of the edge.

import { FULL_TURN } from './edge.ts';

export interface Span {
  readonly from: number;
  readonly to: number;
}

export type Spans = readonly Span[];

export const NO_SPANS: Spans = [];
export const WHOLE_SIDE: Spans = [{ from: 0, to: 1 }];
export const WHOLE_RIM: Spans = [{ from: 0, to: FULL_TURN }];

/** What is left of the spans when the stretch from `from` to `to` is taken away. */
export function without(spans: Spans, from: number, to: number): Spans {
  if (to <= from) return spans;
  const [only] = spans;
  if (only === undefined || (spans.length === 1 && (to <= only.from || from >= only.to))) return spans;
  const left: Span[] = [];
  for (const span of spans) {
    if (to <= span.from || from >= span.to) left.push(span);
    else {
      if (span.from < from) left.push({ from: span.from, to: from });
      if (to < span.to) left.push({ from: to, to: span.to });
    }
  }
  return left;
}

/** The stretches common to both lists. */
export function common(a: Spans, b: Spans): Spans {
  const shared: Span[] = [];
  for (const p of a) {
    for (const q of b) {
      const [from, to] = [Math.max(p.from, q.from), Math.min(p.to, q.to)];
      if (from < to) shared.push({ from, to });
    }
  }
  return shared;
}

/** The same stretches joined where they overlap, in rising order. */
export function joined(spans: Spans): Spans {
  const rising = [...spans].sort((a, b) => a.from - b.from);
  const merged: Span[] = [];
  for (const span of rising) {
    const last = merged.at(-1);
    if (last !== undefined && span.from <= last.to) {
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    } else merged.push(span);
  }
  return merged;
}

/** An arc of directions, rad, as spans from 0 to a full turn: two of them where it passes 0. */
export function arcSpans(startRad: number, lengthRad: number): Spans {
  const from = ((startRad % FULL_TURN) + FULL_TURN) % FULL_TURN;
  const to = from + lengthRad;
  if (to <= FULL_TURN) return [{ from, to }];
  return [
    { from: 0, to: to - FULL_TURN },
    { from, to: FULL_TURN },
  ];
}
