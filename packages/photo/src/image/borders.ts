// The outer borders of connected areas of a mask. Source: border following, Suzuki and Abe, Topological structural analysis
// of digitized binary images by border following, 1985; areas are connected over corners too.

import type { Mask } from './dark.ts';

/** Middles of the border pixels in order, x and y by turns, in the picture's pixels. */
export type Border = Float64Array;

/**
 * Every outer border of `fewest` to `most` pixels, clockwise as seen. A border pixel belongs to one border only, the first
 * that reaches it. The mask is written into: what was on a border comes back as 2.
 */
export function outerBorders(mask: Mask, fewest: number, most: number): Border[] {
  const { stride, rows, data } = mask;
  const borders: Border[] = [];
  const places = new Int32Array(most);
  for (let y = 1; y < rows - 1; y += 1) {
    for (let at = y * stride + 1, end = (y + 1) * stride - 1; at < end; at += 1) {
      if (data[at] !== FRESH || data[at - 1] !== EMPTY) continue;
      const count = follow(mask, at, places);
      if (count < fewest || count > most) continue;
      const border = middlesOf(places.subarray(0, count), stride);
      if (runsClockwise(border)) borders.push(border);
    }
  }
  return borders;
}

/** Pixels inside the line through the middles of a border. */
export function insidePx(border: Border): number {
  let twice = 0;
  const count = border.length;
  for (let k = 0; k < count; k += 2) {
    const next = k + 2 < count ? k + 2 : 0;
    twice += (border[k] ?? 0) * (border[next + 1] ?? 0) - (border[next] ?? 0) * (border[k + 1] ?? 0);
  }
  return twice / 2;
}

const [EMPTY, FRESH, SEEN] = [0, 1, 2];

/** Goes once round from `start`, whose left neighbour is empty; the number of steps, which may be more than there is room for. */
function follow({ stride, data }: Mask, start: number, places: Int32Array): number {
  // To the right, then on clockwise as seen.
  const steps = [1, stride + 1, stride, stride - 1, -1, -stride - 1, -stride, -stride + 1];
  let [at, from, count, first] = [start, 5, 0, -1];
  for (;;) {
    data[at] = SEEN;
    let way = -1;
    for (let turn = 0; turn < 8; turn += 1) {
      const next = (from + turn) % 8;
      if (data[at + (steps[next] ?? 0)] !== EMPTY) {
        way = next;
        break;
      }
    }
    if (way < 0) return 1;
    if (at === start && way === first) return count;
    if (first < 0) first = way;
    if (count < places.length) places[count] = at;
    count += 1;
    at += steps[way] ?? 0;
    from = (way + 6) % 8;
  }
}

function middlesOf(places: Int32Array, stride: number): Border {
  const border = new Float64Array(2 * places.length);
  places.forEach((at, k) => {
    border[2 * k] = (at % stride) - 0.5;
    border[2 * k + 1] = Math.floor(at / stride) - 0.5;
  });
  return border;
}

/** With y down, a border that runs clockwise as seen has a positive area; round a hole it runs the other way. */
const runsClockwise = (border: Border): boolean => insidePx(border) > 0;
