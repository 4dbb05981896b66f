// The ruler over the bars: where it begins and ends, its numbers and its divisions, in the unit that is shown.

export interface Tick {
  readonly at: number;
  readonly size: 'long' | 'middle' | 'short';
}

export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly numbers: readonly number[];
  readonly ticks: readonly Tick[];
}

/** More numbers than this cannot be read on a projector. */
const MOST_NUMBERS = 10;

/** From 0, or from below it where a value is, to the next half step past `most`. `inches`: divided by halving. */
export function axisOf(least: number, most: number, inches: boolean): Axis {
  const step = stepFor(Math.max(most, 0) - Math.min(least, 0), inches);
  const half = step / 2;
  const from = Math.floor(Math.min(least, 0) / half + SLACK) * half;
  const to = Math.max(1, Math.ceil(most / half - SLACK)) * half;
  const divisions = inches ? 8 : 10;
  const size = step / divisions;
  const count = Math.round((to - from) / size);
  const first = Math.round(from / size);
  const ticks = Array.from({ length: count + 1 }, (_, k) => ({
    at: ((first + k) * step) / divisions,
    size: sizeOf(first + k, divisions),
  }));
  return { from, to, ticks, numbers: ticks.filter(({ size: tick }) => tick === 'long').map(({ at }) => at) };
}

/** Where a value stands on the ruler, in percent of its length. */
export const percentAt = (value: number, { from, to }: Axis): number => (100 * (value - from)) / (to - from);

/** What is left of a whole number of steps after arithmetic in doubles. */
const SLACK = 1e-9;

/** 1, 2, 5, 10, 20 ...; for inches 1, 2, 4, 8 ... and 1/2, 1/4 ... */
function stepFor(range: number, inches: boolean): number {
  if (range <= 0) return 1;
  const enough = range / (MOST_NUMBERS - 1);
  if (inches) return 2 ** Math.ceil(Math.log2(enough) - SLACK);
  const power = 10 ** Math.floor(Math.log10(enough) + SLACK);
  return power * ([1, 2, 5].find((times) => times * power >= enough * (1 - SLACK)) ?? 10);
}

function sizeOf(division: number, divisions: number): Tick['size'] {
  if (division % divisions === 0) return 'long';
  return division % (divisions / 2) === 0 ? 'middle' : 'short';
}
