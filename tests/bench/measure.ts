// Times of several ways to do one thing, taken in turns within one run, so that whatever else the machine does falls on
// all of them alike. Milliseconds; the figures to report are ratios of these, never the times themselves.

/** One line of a bench's table: a ratio (unit "x"), a share or a count, beside what it should be. */
export interface Row {
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: string;
}

export type Report = (row: Row) => void;

/** A way to do the thing. It returns what it worked out, so that the work cannot be left out as useless. */
export type Way = () => NonNullable<unknown>;

/** A sample repeats a way until it takes this long: well above the clock's own step. */
const SAMPLE_MS = 5;

/**
 * Median time of one call of each way, in ms, over `rounds` rounds in which every way is sampled once, forwards and
 * backwards by turns. Throws RangeError when a way returns nothing: its work might then be left out.
 */
export function interleave<Name extends string>(
  ways: Readonly<Record<Name, Way>>,
  rounds: number,
): Record<Name, number> {
  const entries = Object.entries<Way>(ways).map(([name, way]) => ({ name, way, calls: callsFor(name, way) }));
  const times = new Map<string, number[]>(entries.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round += 1) {
    for (const { name, way, calls } of round % 2 === 0 ? entries : [...entries].reverse()) {
      times.get(name)?.push(timeOf(name, way, calls) / calls);
    }
  }
  return Object.fromEntries([...times].map(([name, samples]) => [name, median(samples)])) as Record<Name, number>;
}

/** How many calls fill a sample; the first calls also warm the way up. */
function callsFor(name: string, way: Way): number {
  let calls = 1;
  while (timeOf(name, way, calls) < SAMPLE_MS) calls *= 2;
  return calls;
}

function timeOf(name: string, way: Way, calls: number): number {
  let last: unknown;
  const start = performance.now();
  for (let call = 0; call < calls; call += 1) last = way();
  const timeMs = performance.now() - start;
  if (last === undefined) throw new RangeError(`the way ${name} returns nothing`);
  return timeMs;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.slice(Math.floor((sorted.length - 1) / 2), Math.floor(sorted.length / 2) + 1);
  if (middle.length === 0) throw new RangeError('there is no median of nothing');
  return middle.reduce((sum, value) => sum + value, 0) / middle.length;
}
