// A working as rows on squared paper: what it is of, how it is worked out, what comes out. The results of the pieces keep
// the digits that the sum below them was made with, so that a pupil who adds up the column gets that sum.

import type { MeasuredFact, WorkingPart } from '@cairnmark/geometry';
import { amount, capital, measureName } from './amounts.ts';
import type { Voice } from './voice.ts';
import { inputText, stepParts } from './working.ts';

export interface WorkingRow {
  /** A kind of piece, or the measure; empty where the row goes on with the one above. */
  readonly what: string;
  readonly how: string;
  readonly result: string;
  /** The result of it all: a line is drawn above it. */
  readonly whole: boolean;
}

/** The pieces of a height stand as in the tower: the top one first. */
export function workingRows(fact: MeasuredFact, voice: Voice): readonly WorkingRow[] {
  const { parts } = fact.working;
  const inOrder = fact.id === 'height' ? [...parts].reverse() : parts;
  return [...inOrder.flatMap((part) => partRows(part, voice)), ...wholeRows(fact, voice)];
}

function partRows({ kind, times, each, unit, steps }: WorkingPart, voice: Voice): readonly WorkingRow[] {
  const rows = steps.map((step) => {
    const { how, result } = stepParts(step, null, voice);
    return { what: '', how: how.join(' = '), result, whole: false };
  });
  const all = inputText({ value: times * each, unit }, voice);
  const several = { what: '', how: `${times} × ${inputText({ value: each, unit }, voice)}`, result: all, whole: false };
  if (times > 1) rows.push(several);
  else if (rows.length === 0) rows.push({ what: '', how: '', result: all, whole: false });
  return rows.map((row, k) => (k === 0 ? { ...row, what: voice.reader.kindName(kind) } : row));
}

function wholeRows(fact: MeasuredFact, voice: Voice): readonly WorkingRow[] {
  const { id, value, tolerance, working } = fact;
  const { method, steps, parts } = working;
  const what = capital(measureName(id, voice));
  const inWords = voice.words.results[`method.${method}`];
  if (steps.length === 0) {
    return [{ what, how: parts.length > 0 ? '' : inWords, result: amount(id, value, tolerance, voice), whole: true }];
  }
  const rows = steps.map((step, k) => {
    const last = k === steps.length - 1;
    const { how, result } = stepParts(step, last ? 0 : null, voice);
    const added = last && parts.length > 0 && method !== 'ratio' && method !== 'highest-point';
    return { what: last ? what : '', how: added ? '' : how.join(' = '), result, whole: last };
  });
  // A quotient has a unit of both its amounts, which a step does not know.
  if (method === 'ratio') {
    return rows.map((row) => (row.whole ? { ...row, result: amount(id, value, tolerance, voice) } : row));
  }
  return method === 'surface-less-contacts' ? [{ what: '', how: inWords, result: '', whole: false }, ...rows] : rows;
}
