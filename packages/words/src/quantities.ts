// Values with their unit, in honest digits. A reading is rounded to the ruler's division, or more coarsely where the
// tolerance is wide: one step goes into the tolerance at least three times (so at most two of its digits are shown).
// An exact value (a rule's limit, a size in a kit) is shown in full; so is what a person read or decided, or what the ranking
// has rounded, with the decimals of the ruler or of the rounding. In inches these are read on a ruler, to sixteenths: only
// what a rule or a rate says is told in decimals of an inch, for it must not be moved.

import type { Ruler, Unit } from '@cairnmark/geometry';
import { inchesUp, inchReading, SIXTEENTH_MM } from './inches.ts';
import { fixed, isWhole, stepsUp, trimmed, wholeSteps } from './numbers.ts';
import type { Quotient, ShownUnit } from './units.ts';
import { factUnit, withUnit } from './units.ts';

/** Decimals of an area or a volume that nothing limits: more than any paper solid deserves, for a tiny tolerance. */
const MOST_DECIMALS = 3;
const FINEST = 10 ** -MOST_DECIMALS;

/** mm. The division of the finest ruler: no error of a length is told finer. */
const FINEST_LENGTH_MM = 1;

/** A measured value as the class reads it, for instance "25.5 cm" or "7 3/8 in". `tolerance` in the engine's unit. */
export function reading(value: number, unit: Unit | Quotient, tolerance: number, ruler: Ruler, mark: string): string {
  const shown = factUnit(unit, ruler);
  if (unit === 'mm' && shown.name === 'in') return withUnit(inchReading(value, inchStep(tolerance, ruler)), shown);
  if (unit === 'mm') return decimal(value, shown, Math.max(ruler.stepMm, stepFor(tolerance, shown)), mark);
  if (tolerance < 3 * FINEST * shown.size) return exact(value, unit, ruler, mark);
  return decimal(value, shown, stepFor(tolerance, shown), mark);
}

/** A value that is known exactly, with as many decimals as it has (three at most); inches as a fraction if they are one. */
export function exact(value: number, unit: Unit | Quotient, ruler: Ruler, mark: string): string {
  const shown = factUnit(unit, ruler);
  if (isFraction(value, shown)) return withUnit(inchReading(value, SIXTEENTH_MM), shown);
  return withUnit(trimmed(value / shown.size, 0, MOST_DECIMALS, mark), shown);
}

/** A length that was read or decided: in full, with at least the decimals of the ruler. What is no length is shown exactly. */
export function inFull(value: number, unit: Unit | Quotient, ruler: Ruler, mark: string): string {
  const shown = factUnit(unit, ruler);
  if (unit !== 'mm') return exact(value, unit, ruler, mark);
  if (shown.name === 'in') return sixteenths(value, shown, ruler, mark);
  return withUnit(trimmed(value / shown.size, decimalsOf(ruler.stepMm / shown.size), MOST_DECIMALS, mark), shown);
}

/** A whole number of `step`s, with the decimals that the step has. */
export function inSteps(value: number, step: number, unit: Unit | Quotient, ruler: Ruler, mark: string): string {
  const shown = factUnit(unit, ruler);
  if (unit === 'mm' && shown.name === 'in') return sixteenths(value, shown, ruler, mark);
  return withUnit(fixed(value / shown.size, decimalsOf(step / shown.size), mark), shown);
}

/**
 * "± 0.3 cm", rounded up; empty for a value without error, such as a count. Beside a length, which has the divisions of
 * the ruler, it has whole millimetres and no nought is added; beside an area or a volume both have the same decimals.
 */
export function plusMinus(tolerance: number, unit: Unit | Quotient, ruler: Ruler, mark: string): string {
  if (tolerance <= 0) return '';
  const shown = factUnit(unit, ruler);
  if (shown.name === 'in') return `± ${withUnit(inchesUp(tolerance), shown)}`;
  const step = Math.max(stepFor(tolerance, shown), unit === 'mm' ? FINEST_LENGTH_MM : 0);
  const shownUp = stepsUp(tolerance, step) * step;
  return `± ${unit === 'mm' ? exact(shownUp, unit, ruler, mark) : decimal(shownUp, shown, step, mark)}`;
}

/** The largest power of ten of the shown unit that goes into the tolerance at least three times, in the engine's unit. */
function stepFor(tolerance: number, shown: ShownUnit): number {
  if (tolerance <= 0) return FINEST * shown.size;
  const power = Math.floor(Math.log10(tolerance / shown.size / 3) + 1e-9);
  return Math.max(10 ** power, FINEST) * shown.size;
}

/** A length in inches that stands on a division of the finest ruler. */
const isFraction = (value: number, shown: ShownUnit): boolean => shown.name === 'in' && isWhole(value / SIXTEENTH_MM);

/** A length as the finest ruler in inches reads it; by its decimals where that would make nothing of it. */
function sixteenths(value: number, shown: ShownUnit, ruler: Ruler, mark: string): string {
  const isLost = value !== 0 && wholeSteps(value, SIXTEENTH_MM) === 0;
  return isLost ? exact(value, 'mm', ruler, mark) : withUnit(inchReading(value, SIXTEENTH_MM), shown);
}

/** Of a step; where it has no end in this unit, those that tell two steps apart. */
function decimalsOf(step: number): number {
  const [, decimals = ''] = trimmed(step, 0, MOST_DECIMALS, '.').split('.');
  if (isWhole(step * 10 ** decimals.length)) return decimals.length;
  return Math.min(MOST_DECIMALS, Math.max(0, Math.ceil(-Math.log10(step))));
}

/** As `stepFor` for inches, in halvings of an inch; never finer than the ruler. */
function inchStep(tolerance: number, ruler: Ruler): number {
  let stepMm = ruler.stepMm;
  while (stepMm < 16 * SIXTEENTH_MM && 2 * stepMm <= tolerance / 3) stepMm *= 2;
  return stepMm;
}

function decimal(value: number, shown: ShownUnit, step: number, mark: string): string {
  const stepShown = step / shown.size;
  const rounded = wholeSteps(value, step) * stepShown;
  const decimals = Math.max(0, Math.ceil(-Math.log10(stepShown) - 1e-9));
  return withUnit(fixed(rounded, decimals, mark), shown);
}
