// A working as lines that a pupil can follow with a pencil: symbols, then numbers put in, then the result.
// Lengths are in cm (or inches) throughout, so that units multiply: cm × cm² = cm³.

import type { Quantity, Step, Working, WorkingPart } from '@cairnmark/geometry';
import type { Written } from './formula.ts';
import { formulaText } from './formula.ts';
import { trimmed } from './numbers.ts';
import { withUnit, workingUnit } from './units.ts';
import type { Voice } from './voice.ts';

/** All lines of a working: for every kind of piece its steps and its share, then the steps of the whole. */
export function workingLines(working: Working, voice: Voice): readonly string[] {
  const parts = working.parts.flatMap((part) => partLines(part, voice));
  return [...parts, ...linesOf(working.steps, working.method === 'ratio' ? 2 : 0, voice)];
}

/** "V = 1/3 × B × h = 1/3 × 25.0 cm² × 7.0 cm = 58.3 cm³", one line a step. */
export function stepLines(steps: readonly Step[], voice: Voice): readonly string[] {
  return linesOf(steps, 0, voice);
}

/** Digits that a number has more than a result; a quotient of large numbers may be small, and needs them. */
export type Extra = 0 | 1 | 2;

/** `extra`: of the last result. */
function linesOf(steps: readonly Step[], extra: Extra, voice: Voice): readonly string[] {
  return steps.map((step, k) => stepLine(step, k === steps.length - 1 ? extra : null, voice));
}

/** `extra`: null for a step whose result is calculated with further. */
function stepLine(step: Step, extra: Extra | null, voice: Voice): string {
  const { how, result } = stepParts(step, extra, voice);
  return [...how, result].join(' = ');
}

/** A step in its two halves: how it is worked out, each way to write it once, and what comes out. */
export function stepParts(
  { symbol, formula, inputs, result }: Step,
  extra: Extra | null,
  voice: Voice,
): { readonly how: readonly string[]; readonly result: string } {
  const inSymbols = formulaText(formula, (name) => ({ text: symbolText(name), apart: false }), voice.words.decimalMark);
  const inNumbers = formulaText(formula, (name) => putIn(name, inputs[name], voice), voice.words.decimalMark);
  const outcome = extra === null ? inputText(result, voice) : shown(result, voice, extra);
  const how = [...new Set([symbolText(symbol), inSymbols, inNumbers])].filter((text) => text !== outcome);
  return { how, result: outcome };
}

/** "large cube: V = a³ = (5.0 cm)³ = 125 cm³", then "large cube: 2 × 125 cm³ = 250 cm³" where there are several. */
function partLines({ kind, times, each, unit, steps }: WorkingPart, voice: Voice): readonly string[] {
  const one = inputText({ value: each, unit }, voice);
  const all = resultText({ value: times * each, unit }, voice);
  const share = times === 1 ? [] : [`${times} × ${one} = ${all}`];
  const lines = [...stepLines(steps, voice), ...share];
  return (lines.length > 0 ? lines : [all]).map((line) => `${voice.reader.kindName(kind)}: ${line}`);
}

function putIn(name: string, quantity: Quantity | undefined, voice: Voice): Written {
  if (quantity === undefined) return { text: symbolText(name), apart: false };
  return { text: inputText(quantity, voice), apart: quantity.unit !== 'count' };
}

/** V1 as V₁. */
function symbolText(name: string): string {
  return name.replace(/\d/g, (digit) => String.fromCodePoint((digit.codePointAt(0) ?? 0) - 48 + 0x2080));
}

/**
 * A number that is calculated with keeps one digit more than a result, so that the pupil's result is the same. A length
 * keeps two: it is multiplied most, and a sixteenth of an inch has four decimals.
 */
export const inputText = (quantity: Quantity, voice: Voice): string =>
  shown(quantity, voice, quantity.unit === 'mm' ? 2 : 1);
const resultText = (quantity: Quantity, voice: Voice): string => shown(quantity, voice, 0);

/** One decimal below 100 ("25.0 cm²") and none needed above ("125 cm³"); more only where the value has them. */
function shown({ value, unit }: Quantity, { reader, words }: Voice, extra: Extra): string {
  const unitShown = workingUnit(unit, reader.ruler);
  const amount = value / unitShown.size;
  if (unit === 'ratio') return trimmed(amount, 0, 2, words.decimalMark);
  if (unit === 'count' || unit === 'rad') return withUnit(trimmed(amount, 0, 4, words.decimalMark), unitShown);
  const most = (unitShown.name.startsWith('in') ? 2 : 1) + extra;
  return withUnit(trimmed(amount, Math.abs(amount) < 100 ? 1 : 0, most, words.decimalMark), unitShown);
}
