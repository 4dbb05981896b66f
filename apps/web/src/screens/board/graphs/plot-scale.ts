// The ruler below the dots: from where to where it goes, its numbers and its divisions, in the unit that is shown. It need not
// begin at 0, since dots have no length.

export interface Division {
  readonly at: number;
  /** Of the whole length of a line: 1 at a number. */
  readonly size: number;
}

export interface PlotScale {
  readonly from: number;
  readonly to: number;
  readonly numbers: readonly number[];
  readonly divisions: readonly Division[];
}

export interface ScaleOf {
  /** Divided by halving, else by tens. */
  readonly inches: boolean;
  /** The finest division there is, in the unit that is shown; 0: any. */
  readonly finest: number;
  /** What the numbers go in at least: 1 for lengths and counts. 0: any. */
  readonly leastStep: number;
}

/** `widthPx`: of the scale; more fits on a wider one. */
export function plotScale(values: readonly number[], of: ScaleOf, widthPx: number): PlotScale {
  const [least, most] = values.length === 0 ? [0, 1] : [Math.min(...values), Math.max(...values)];
  const step = numberStep(least, most, of, widthPx);
  const first = Math.floor(least / step + SLACK);
  // Two numbers at least, so that there is a scale even where all values are one.
  const last = Math.max(first + 1, Math.ceil(most / step - SLACK));
  const [from, to] = [first * step, last * step];
  const parts = partsOfStep(step, of, (widthPx * step) / (to - from));
  const divisions = Array.from({ length: (last - first) * parts + 1 }, (_, k) => ({
    at: (first * parts + k) * (step / parts),
    size: sizeOf(k % parts, parts, step, of.inches),
  }));
  const numbers = Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step);
  return { from, to, numbers, divisions };
}

/** px. Numbers nearer to each other run together. */
const NUMBERS_APART_PX = 46;
/** px. Divisions nearer to each other are a grey band. */
const DIVISIONS_APART_PX = 5;
/** No unit: what is left of a whole number of steps after arithmetic in doubles. */
const SLACK = 1e-9;

/** The smallest step of the series whose numbers have room. */
function numberStep(least: number, most: number, { inches, leastStep }: ScaleOf, widthPx: number): number {
  const range = Math.max(most - least, leastStep, Math.abs(most) * 1e-3, 1e-3);
  const room = Math.max(1, Math.floor(widthPx / NUMBERS_APART_PX));
  const begin = Math.max(leastStep, range / room / 10);
  const series = inches ? halvings(begin) : ones(begin);
  return series.find((step) => Math.ceil(most / step) - Math.floor(least / step) <= room) ?? series.at(-1) ?? 1;
}

/** 1, 2, 5, 10 ... from `begin` on. */
function ones(begin: number): readonly number[] {
  const power = Math.floor(Math.log10(begin) + SLACK);
  const all = Array.from({ length: 6 }, (_, k) => [1, 2, 5].map((times) => times * 10 ** (power + k))).flat();
  return all.filter((step) => step >= begin * (1 - SLACK));
}

/** 1, 2, 4, 8 ... from `begin` on. */
function halvings(begin: number): readonly number[] {
  const power = Math.ceil(Math.log2(begin) - SLACK);
  return Array.from({ length: 16 }, (_, k) => 2 ** (power + k));
}

/** Into how many parts the space between two numbers goes: the most that are not finer than the ruler and can be told apart. */
function partsOfStep(step: number, { inches, finest }: ScaleOf, stepPx: number): number {
  const choices = inches ? [16, 8, 4, 2] : TENS[leading(step)];
  const fits = (parts: number): boolean => stepPx / parts >= DIVISIONS_APART_PX && isWhole(step / parts, finest);
  return choices?.find(fits) ?? 1;
}

/** By the first digit of the step: its parts are tens, halves or ones themselves. */
const TENS: Readonly<Record<number, readonly number[]>> = { 1: [10, 2], 2: [20, 4, 2], 5: [50, 10, 5] };

const leading = (step: number): number => Math.round(step / 10 ** Math.floor(Math.log10(step) + SLACK));

/** A whole number of the finest divisions. */
function isWhole(length: number, finest: number): boolean {
  if (finest <= 0) return true;
  const times = length / finest;
  return times > 1 - SLACK && Math.abs(times - Math.round(times)) < SLACK * Math.max(1, times);
}

/** A half is longer than a quarter, a quarter than an eighth; of tens a half, or a one between two numbers, is longer. */
function sizeOf(part: number, parts: number, step: number, inches: boolean): number {
  if (part === 0) return 1;
  if (!inches) {
    const middles = leading(step) === 5 ? 5 : 2;
    return parts > middles && part % (parts / middles) === 0 ? 0.7 : 0.45;
  }
  const halved = [1, 2, 3, 4].find((times) => (part * 2 ** times) % parts === 0) ?? 4;
  return [0.78, 0.6, 0.45, 0.32][halved - 1] ?? 0.32;
}

/** As many decimals as one of the numbers needs, three at most: 1 stands as 1.0 beside 1.5. */
export const decimalsOf = (numbers: readonly number[]): number =>
  [0, 1, 2].find((decimals) => numbers.every((one) => Math.abs(shifted(one, decimals)) < STEP_SLACK)) ?? 3;

/** How far a number is from a whole one once its point is moved. */
const shifted = (value: number, decimals: number): number => {
  const moved = value * 10 ** decimals;
  return moved - Math.round(moved);
};

/** No unit: what arithmetic in doubles leaves of a whole number. */
const STEP_SLACK = 1e-6;
