// The facts of a build: name, value with its tolerance, where it came from, and how it was worked out.

import type { DecisionMade, ReportedFact } from '@cairnmark/engine';
import type { GapPlace, Working } from '@cairnmark/geometry';
import { amount, amountApart, errorText, fullAmount, listed, measureName } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import { inFull } from './quantities.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';
import { workingLines } from './working.ts';

/** "25.5 cm ± 0.3 cm", "5 pieces", or the reason why there is no number. What a person decided is shown in full. */
export function factText(fact: ReportedFact, voice: Voice): string {
  if (fact.value === null) return unmeasuredText(fact, voice.words);
  const value =
    fact.source === 'decided'
      ? fullAmount(fact.id, fact.value, null, voice)
      : amount(fact.id, fact.value, fact.tolerance, voice);
  const error = errorText(fact.id, fact.tolerance, voice);
  return error === '' ? value : `${value} ${error}`;
}

/** What was worked out and what was measured, where another value counts, and the readings where there are several. */
export function otherValues({ id, unit, source, predicted, observed }: ReportedFact, voice: Voice): readonly string[] {
  const { reader, words } = voice;
  const { sources } = words.names;
  const line = (kind: string, value: number, tolerance: number): string => {
    const error = errorText(id, tolerance, voice);
    return `${kind}: ${amount(id, value, tolerance, voice)} ${error}`.trimEnd();
  };
  const lines: string[] = [];
  if (observed !== null && source !== 'observed')
    lines.push(line(sources.observed, observed.value, observed.tolerance));
  if (observed !== null && observed.readings.length > 1) {
    const readings = observed.readings.map((value) => inFull(value, unit, reader.ruler, words.decimalMark));
    lines.push(fill(words.results.readings, { readings: listed(readings, words.and) }));
  }
  if (predicted?.status === 'measured' && source !== 'predicted') {
    lines.push(line(sources.predicted, predicted.value, predicted.tolerance));
  }
  return lines;
}

/** The lines of a working; the method in words where there is nothing to reckon, or where its letters need telling. */
export function workingText(working: Working, voice: Voice): readonly string[] {
  const lines = workingLines(working, voice);
  const method = voice.words.results[`method.${working.method}`];
  return lines.length === 0 || working.method === 'surface-less-contacts' ? [...lines, method] : lines;
}

/** A narrow place that counts as closed. */
export function gapSentence({ at, widthMm }: GapPlace, voice: Voice): string {
  const { reader, words } = voice;
  const { results, decimalMark } = words;
  const length = (mm: number): string => inFull(Math.abs(mm), 'mm', reader.ruler, decimalMark);
  const [x, y] = at;
  return fill(results.gap, {
    width: length(widthMm),
    across: fill(results[x < 0 ? 'gap.left' : 'gap.right'], { length: length(x) }),
    along: fill(results[y < 0 ? 'gap.front' : 'gap.back'], { length: length(y) }),
  });
}

/**
 * Who set a value and why, with the value that it stands for (in full where it reads the same), or that it was taken back;
 * of several on one value also which one counts.
 */
export function decisionSentence(made: DecisionMade, fact: ReportedFact | null, voice: Voice): string {
  const { results } = voice.words;
  const { decision, state, replaces } = made;
  const { reason, takenBack } = decision;
  const measure = measureName(decision.measure, voice);
  const before = valueBefore(made, fact);
  const value = fullAmount(decision.measure, decision.value, before?.value ?? null, voice);
  if (takenBack !== undefined || state === 'taken-back') {
    return fill(results['decision.back'], { measure, value, by: decision.by, reason: takenBack?.reason ?? reason });
  }
  const isOnlyOne = state === 'counts' && replaces === null;
  const by = isOnlyOne ? decision.by : fill(results[`decision.${state}`], { by: decision.by });
  if (before === null) return fill(results['decision.made'], { measure, value, by, reason });
  return fill(results['decision.instead'], { measure, value, before: textBefore(before, decision, voice), by, reason });
}

/** What stood before a decision; no `tolerance`: an earlier decision. */
interface Before {
  readonly value: number;
  readonly tolerance: number | null;
}

/** An earlier decision, else the ruler's value, else the one worked out; null: nothing. */
function valueBefore({ replaces }: DecisionMade, fact: ReportedFact | null): Before | null {
  if (replaces !== null) return { value: replaces.value, tolerance: null };
  if (fact === null) return null;
  if (fact.observed !== null) return fact.observed;
  return fact.predicted?.status === 'measured' ? fact.predicted : null;
}

function textBefore({ value, tolerance }: Before, decision: DecisionMade['decision'], voice: Voice): string {
  const { measure } = decision;
  const isSettled = tolerance === null || value === decision.value;
  return isSettled
    ? fullAmount(measure, value, decision.value, voice)
    : amountApart(measure, value, decision.value, tolerance, voice);
}

function unmeasuredText({ predicted }: ReportedFact, { results }: Catalogue): string {
  if (predicted?.status !== 'not-measured') return results['unmeasured.unknown'];
  return results[`unmeasured.${predicted.reason}`];
}
