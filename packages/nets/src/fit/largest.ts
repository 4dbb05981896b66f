// The largest net of a shape that fits a page, found by halving, with real tabs: tabs stay as deep while the solid grows,
// so there is no formula for it. mm.

import type { Result, SizeIssue, Sizes, SolidSpec } from '@cairnmark/geometry';
import { definitionOf, failure, LARGEST_SIZE_MM, makeSolid, SMALLEST_SIZE_MM, success } from '@cairnmark/geometry';
import { makeNet } from '../make-net.ts';
import type { NetIssue, NetOptions } from '../net.ts';
import { LARGEST_RELATIVE, LARGEST_STEP_MM } from '../tolerance.ts';
import { netFits } from './fits.ts';
import type { Frame } from './frame.ts';

export interface Largest {
  /** Every length of the asked solid times this just fits; below 1 the asked solid is too large. */
  readonly scale: number;
  /** The size that comes first in the solid's own terms, and how long it may be: in half millimetres, rounded down. */
  readonly size: string;
  readonly largestMm: number;
  /** The sizes of the solid whose first size is `largestMm`, in its own terms. */
  readonly sizes: Sizes;
}

/**
 * How large a solid shaped like `spec` can be, all lengths in the same proportion, so that each part of its net fits a page
 * of its own. Refused when the sizes are no solid, or when nobody folds it. Never above the largest length of a kit.
 */
export function largestThatFits(
  spec: SolidSpec,
  frame: Frame,
  options: NetOptions,
): Result<Largest, SizeIssue | NetIssue> {
  const made = makeSolid(spec);
  if (!made.ok) return made;
  const net = makeNet(made.value, options);
  if (!net.ok) return net;
  const own: SolidSpec = { solid: spec.solid, sizes: made.value.sizes };
  const lengths = lengthsOf(own);
  const fitsAt = (scale: number): boolean => solidFits(scaled(own, scale), frame, options);
  const [least, most] = [SMALLEST_SIZE_MM / Math.min(...lengths), LARGEST_SIZE_MM / Math.max(...lengths)];
  const scale = halved(fitsAt, least * (1 + LARGEST_RELATIVE), most * (1 - LARGEST_RELATIVE));
  if (scale === null) return failure([{ code: 'too-large', path: [], details: { paper: frame.paper } }]);
  return success(largestOf(own, scale));
}

/** The same shape with every length times `scale`; counts stay. */
export function scaled({ solid, sizes }: SolidSpec, scale: number): SolidSpec {
  const counts = new Set(definitionOf(solid).fields.flatMap(({ name, unit }) => (unit === 'count' ? [name] : [])));
  const entries = Object.entries(sizes).map(([name, value]) => [name, counts.has(name) ? value : value * scale]);
  return { solid, sizes: Object.fromEntries(entries) };
}

function lengthsOf({ solid, sizes }: SolidSpec): readonly number[] {
  return definitionOf(solid).fields.flatMap(({ name, unit }) => (unit === 'mm' ? [sizes[name] ?? Number.NaN] : []));
}

function solidFits(spec: SolidSpec, frame: Frame, options: NetOptions): boolean {
  const made = makeSolid(spec);
  if (!made.ok) throw new RangeError(`${spec.solid} has no such size`);
  const net = makeNet(made.value, { ...options, frame });
  return net.ok && netFits(net.value, frame);
}

/** The largest scale that fits, by bisection in proportion; null when not even the least does. */
function halved(fitsAt: (scale: number) => boolean, least: number, most: number): number | null {
  if (!fitsAt(least)) return null;
  if (fitsAt(most)) return most;
  let [low, high] = [least, most];
  if (low < 1 && high > 1) {
    // Most solids that are asked for are within a factor of two of the page.
    const one = fitsAt(1);
    [low, high] = one ? [1, high] : [low, 1];
    const twice = one ? 2 : 1 / 2;
    if (twice > low && twice < high) [low, high] = fitsAt(twice) ? [twice, high] : [low, twice];
  }
  while (high / low > 1 + LARGEST_RELATIVE) {
    const middle = Math.sqrt(low * high);
    [low, high] = fitsAt(middle) ? [middle, high] : [low, middle];
  }
  return low;
}

function largestOf(own: SolidSpec, scale: number): Largest {
  const [first] = definitionOf(own.solid).fields.filter(({ unit }) => unit === 'mm');
  const size = first?.name ?? '';
  const askedMm = own.sizes[size] ?? Number.NaN;
  const largestMm = Math.floor((askedMm * scale) / LARGEST_STEP_MM) * LARGEST_STEP_MM;
  return { scale, size, largestMm, sizes: scaled(own, largestMm / askedMm).sizes };
}
