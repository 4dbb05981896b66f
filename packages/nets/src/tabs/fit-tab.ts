// The largest tab on a side that bothers nothing: it clears the faces and tabs of its sheet by a gap for the scissors, and
// lands inside its mate, where it keeps to what is nearer to its own side than to a side of another tab that lands there.
// It starts as deep as asked and shrinks. mm.

import type { Vec2 } from '@cairnmark/geometry';
import { length2, sub2 } from '@cairnmark/geometry';
import type { Figure } from '../plane/convex.ts';
import { figureOf, leftOf, liesIn, overlaps } from '../plane/convex.ts';
import { lay, moved } from '../plane/motion.ts';
import { ROOM_AHEAD_SHARE, SCISSORS_GAP_RAD, TOUCH_RELATIVE } from '../tolerance.ts';
import type { Copy } from './seams.ts';
import type { Bevels, TabShape } from './tab-shape.ts';
import { deepestMm, tabShape } from './tab-shape.ts';

/** What is in the way: figures of each sheet by its number, and the sides along which tabs land by the face they are of. */
export interface Occupied {
  readonly faces: readonly (readonly { readonly face: number; readonly figure: Figure }[])[];
  readonly tabs: Figure[][];
  readonly landingSides: ReadonlyMap<number, readonly Copy[]>;
}

export interface FittedTab {
  readonly shape: TabShape;
  readonly landing: readonly Vec2[];
}

/** Fits a tab on `copy`, whose mate's side is `mate`, and takes its room in `occupied`. */
export function fitTab(copy: Copy, mate: Copy, bevels: Bevels, depthMm: number, occupied: Occupied): FittedTab {
  const deepest = startDepthMm(copy, bevels, depthMm);
  let fitted = tryTab(copy, mate, bevels, deepest);
  for (let k = 1; k <= MOST_TRIES && bothers(copy, mate, bevels, fitted, occupied); k += 1) {
    fitted = tryTab(copy, mate, bevels, deepest * SHRINK ** k);
  }
  occupied.tabs[copy.sheet]?.push(figureOf(fitted.shape.ring));
  return fitted;
}

/** As deep as asked, as edge and mate allow and as the leaning ends allow. */
export function startDepthMm({ a, b, deepestMm: mostMm }: Copy, bevels: Bevels, depthMm: number): number {
  const lengthMm = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return Math.min(depthMm, mostMm, deepestMm(lengthMm, bevels));
}

const SHRINK = 0.9;
/** The last try is a thousandth as deep as the first. */
const MOST_TRIES = 66;

function tryTab(copy: Copy, mate: Copy, bevels: Bevels, depthMm: number): FittedTab {
  const shape = tabShape(copy.a, copy.b, bevels, depthMm);
  const onMate = lay(copy.a, copy.b, mate.b, mate.a);
  return { shape, landing: shape.ring.map((corner) => moved(onMate, corner)) };
}

function bothers(copy: Copy, mate: Copy, bevels: Bevels, { shape, landing }: FittedTab, occupied: Occupied): boolean {
  const wide = figureOf(tabShape(copy.a, copy.b, widened(bevels), shape.depthMm * (1 + ROOM_AHEAD_SHARE)).ring);
  const others = occupied.faces[copy.sheet]?.filter(({ face }) => face !== copy.face) ?? [];
  if (others.some(({ figure }) => overlaps(wide, figure))) return true;
  if (occupied.tabs[copy.sheet]?.some((tab) => overlaps(wide, tab))) return true;
  const onto = occupied.faces[mate.sheet]?.find(({ face }) => face === mate.face);
  if (onto === undefined || !liesIn(figureOf(landing), onto.figure)) return true;
  const rivals = occupied.landingSides.get(mate.face)?.filter(({ at }) => at !== mate.at) ?? [];
  return rivals.some((rival) => landing.some((corner) => isNearer(corner, rival, mate)));
}

function isNearer(point: Vec2, one: Copy, other: Copy): boolean {
  const [toOne, toOther] = [leftOf(one.a, one.b, point), leftOf(other.a, other.b, point)];
  return toOne < toOther - TOUCH_RELATIVE * (length2(sub2(one.b, one.a)) + length2(sub2(other.b, other.a)));
}

const widened = ({ atA, atB }: Bevels): Bevels => ({
  atA: atA + Math.min(atA, SCISSORS_GAP_RAD),
  atB: atB + Math.min(atB, SCISSORS_GAP_RAD),
});
