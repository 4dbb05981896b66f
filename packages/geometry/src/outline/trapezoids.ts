// A ring that is not convex, or that crosses itself, cut into convex pieces: trapezoids with level tops and bottoms.
// What the ring goes round at least once, either way, is inside (non-zero rule); mm.
// Method: level strips between all corners and crossings; in a strip the sides keep their order from left to right.

import type { Vec2 } from '../kernel/vec.ts';
import { length2, sub2 } from '../kernel/vec.ts';
import type { CanFace } from './piece.ts';

/** A convex ring, counter-clockwise, with what it knows of its sides. */
export interface TrapezoidRing {
  readonly ring: readonly Vec2[];
  readonly canFace: CanFace;
}

/** The inside of a ring as trapezoids (or triangles) that overlap nowhere. Strips lower than `noiseMm` are dropped. */
export function trapezoidsOf(ring: readonly Vec2[], canFace: CanFace, noiseMm: number): readonly TrapezoidRing[] {
  const rises = risesOf(ring, canFace);
  const done: Trapezoid[] = [];
  let open: readonly Trapezoid[] = [];
  let bottom = Number.NEGATIVE_INFINITY;
  for (const top of levelsOf(rises)) {
    if (top - bottom <= noiseMm) continue;
    const below = open;
    open = coveredIn(rises, bottom, top).map((strip) => grown(below, strip));
    done.push(...below.filter((trapezoid) => !open.includes(trapezoid)));
    bottom = top;
  }
  return [...done, ...open].map((trapezoid) => ringOf(trapezoid, noiseMm));
}

/** A side of the ring from its lower to its upper end; `turns` is 1 where the ring goes up, -1 where it goes down. */
interface Rise {
  readonly low: Vec2;
  readonly high: Vec2;
  readonly turns: number;
  readonly canFace: boolean;
}

interface Trapezoid {
  readonly left: Rise;
  readonly right: Rise;
  readonly bottom: number;
  top: number;
}

function risesOf(ring: readonly Vec2[], canFace: CanFace): readonly Rise[] {
  const rises: Rise[] = [];
  ring.forEach((a, i) => {
    const b = ring[i + 1] ?? ring[0] ?? a;
    if (a[1] < b[1]) rises.push({ low: a, high: b, turns: 1, canFace: canFace(i) });
    if (a[1] > b[1]) rises.push({ low: b, high: a, turns: -1, canFace: canFace(i) });
  });
  return rises;
}

/** The heights of all corners and crossings, rising. */
function levelsOf(rises: readonly Rise[]): readonly number[] {
  const levels = rises.flatMap(({ low, high }) => [low[1], high[1]]);
  rises.forEach((a, i) => {
    for (const b of rises.slice(i + 1)) {
      const low = Math.max(a.low[1], b.low[1]);
      const high = Math.min(a.high[1], b.high[1]);
      const [apartLow, apartHigh] = [xOf(b, low) - xOf(a, low), xOf(b, high) - xOf(a, high)];
      if (low < high && apartLow * apartHigh < 0) levels.push(low + ((high - low) * apartLow) / (apartLow - apartHigh));
    }
  });
  return levels.sort((a, b) => a - b);
}

/** The stretches of a strip that the ring goes round, from left to right. */
function coveredIn(rises: readonly Rise[], bottom: number, top: number): readonly Trapezoid[] {
  const middle = (bottom + top) / 2;
  const across = rises
    .filter(({ low, high }) => low[1] < middle && middle < high[1])
    .map((rise) => ({ rise, x: xOf(rise, middle) }))
    .sort((a, b) => a.x - b.x);
  const covered: Trapezoid[] = [];
  let turns = 0;
  let left: Rise | undefined;
  for (const { rise } of across) {
    if (turns === 0) left = rise;
    turns += rise.turns;
    if (turns === 0 && left !== undefined) covered.push({ left, right: rise, bottom, top });
  }
  return covered;
}

/** The trapezoid of the strip below, made higher, where it has the same sides; else the new one. */
function grown(below: readonly Trapezoid[], strip: Trapezoid): Trapezoid {
  const same = below.find(({ left, right }) => left === strip.left && right === strip.right);
  if (same === undefined) return strip;
  same.top = strip.top;
  return same;
}

/** Level sides can always face: what is left of them lies on a level side of the ring. */
function ringOf({ left, right, bottom, top }: Trapezoid, noiseMm: number): TrapezoidRing {
  const corners: readonly { at: Vec2; canFace: boolean }[] = [
    { at: [xOf(left, bottom), bottom], canFace: true },
    { at: [xOf(right, bottom), bottom], canFace: right.canFace },
    { at: [xOf(right, top), top], canFace: true },
    { at: [xOf(left, top), top], canFace: left.canFace },
  ];
  const apart = corners.filter(({ at }, i) => length2(sub2(at, (corners[i + 1] ?? corners[0])?.at ?? at)) > noiseMm);
  return { ring: apart.map(({ at }) => at), canFace: (i) => apart[i]?.canFace ?? true };
}

function xOf({ low, high }: Rise, y: number): number {
  if (y === low[1]) return low[0];
  if (y === high[1]) return high[0];
  return low[0] + ((y - low[1]) / (high[1] - low[1])) * (high[0] - low[0]);
}
