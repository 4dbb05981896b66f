// Where colour changes along a line across an edge. Several places come back, the steepest first: which of them is the edge of the
// piece, its neighbours along the outline decide.

import type { Vec2 } from '@cairnmark/geometry';
import type { Photo } from './photo.ts';

export interface ColourStep {
  /** From the point asked about, along the direction asked about, px. */
  readonly offsetPx: number;
  /** Change of colour over two pixels, 0 to 441 (three channels of 255). */
  readonly strength: number;
}

/** Steps of at least `leastStrength` within `reachPx` of `at` along the unit direction `way`; `most` of them. */
export function colourSteps(
  photo: Photo,
  at: Vec2,
  way: Vec2,
  reachPx: number,
  leastStrength: number,
  most: number,
): readonly ColourStep[] {
  const count = Math.ceil(reachPx / STEP_PX);
  const beyond = Math.round(HALF_SPAN_PX / STEP_PX);
  const colours: Colour[] = [];
  for (let k = -count - beyond; k <= count + beyond; k += 1) {
    colours.push(colourAt(photo, at[0] + k * STEP_PX * way[0], at[1] + k * STEP_PX * way[1]));
  }
  const changes = Array.from({ length: 2 * count + 1 }, (_, k) => change(colours[k], colours[k + 2 * beyond]));
  const steps: ColourStep[] = [];
  for (let k = 1; k < changes.length - 1; k += 1) {
    const [before, here, next] = [changes[k - 1] ?? 0, changes[k] ?? 0, changes[k + 1] ?? 0];
    if (here < leastStrength || here < before || here <= next) continue;
    // The top of the parabola through the three.
    const bend = before - 2 * here + next;
    const shift = bend < 0 ? (0.5 * (before - next)) / bend : 0;
    steps.push({ offsetPx: (k - count + shift) * STEP_PX, strength: here });
  }
  return steps.sort((a, b) => b.strength - a.strength).slice(0, most);
}

const STEP_PX = 0.5;
/** A change is taken over two pixels: about the blur of a sharp photo. */
const HALF_SPAN_PX = 1;

type Colour = readonly [red: number, green: number, blue: number];

const change = (a: Colour = BLACK, b: Colour = BLACK): number => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
const BLACK: Colour = [0, 0, 0];

/** Between pixels as in `sample.ts`. */
function colourAt({ width, height, data }: Photo, x: number, y: number): Colour {
  const fromLeft = Math.min(Math.max(x - 0.5, 0), width - 1);
  const fromTop = Math.min(Math.max(y - 0.5, 0), height - 1);
  const [column, row] = [Math.floor(fromLeft), Math.floor(fromTop)];
  const [right, down] = [fromLeft - column, fromTop - row];
  const at = 4 * (row * width + column);
  const across = column + 1 < width ? 4 : 0;
  const below = row + 1 < height ? 4 * width : 0;
  const channel = (k: number): number =>
    ((data[at + k] ?? 0) * (1 - right) + (data[at + across + k] ?? 0) * right) * (1 - down) +
    ((data[at + below + k] ?? 0) * (1 - right) + (data[at + below + across + k] ?? 0) * right) * down;
  return [channel(0), channel(1), channel(2)];
}
