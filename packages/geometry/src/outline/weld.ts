// Rings that run nearly along each other made to share their corners: corners near each other become one, and a side near a
// corner is led through it. A boolean library then sees sides that coincide, not slits of a rounding's width; mm.

import type { Vec2 } from '../kernel/vec.ts';
import { length2, sub2 } from '../kernel/vec.ts';
import type { Box } from './box.ts';
import { boxOfSide } from './box.ts';
import type { Side } from './edge.ts';
import { leftOf, placeOf, sideBetween } from './edge.ts';
import { forNearPairs } from './near.ts';

type Ring = readonly Vec2[];

/** The rings with corners and sides nearer than `weldMm` made one. Nothing moves further; rings that become lines are left out. */
export function welded(rings: readonly Ring[], weldMm: number): readonly Ring[] {
  const corners = rings.flat();
  const stands = standIns(corners, weldMm);
  let start = 0;
  const shared = rings.map((ring) => {
    start += ring.length;
    return ring.map((corner, k) => stands[start - ring.length + k] ?? corner);
  });
  return ledThrough(shared.map(withoutRepeats).filter(isRing), [...new Set(stands)], weldMm);
}

/** For each corner the one that stands in for it: the first within reach that stands for itself, else the corner. */
function standIns(corners: readonly Vec2[], weldMm: number): readonly Vec2[] {
  const earlier: number[][] = corners.map(() => []);
  forNearPairs(corners.map(boxOfPoint), weldMm, (i, j) => earlier[Math.max(i, j)]?.push(Math.min(i, j)));
  const standsForItself: boolean[] = [];
  return corners.map((corner, i) => {
    const candidates = (earlier[i] ?? []).sort((a, b) => a - b).filter((j) => standsForItself[j]);
    const found = candidates
      .flatMap((j) => [corners[j] ?? corner])
      .find((other) => length2(sub2(other, corner)) <= weldMm);
    standsForItself.push(found === undefined);
    return found ?? corner;
  });
}

/** The rings with every side led through the corners near it. */
function ledThrough(rings: readonly Ring[], corners: readonly Vec2[], weldMm: number): readonly Ring[] {
  const sides = rings.flatMap((ring) => ring.map((a, k) => sideBetween(a, ring[k + 1] ?? ring[0] ?? a, k, true)));
  const through: Vec2[][] = sides.map(() => []);
  forNearPairs([...sides.map(boxOfSide), ...corners.map(boxOfPoint)], weldMm, (i, j) => {
    const [side, corner] = [sides[Math.min(i, j)], corners[Math.max(i, j) - sides.length]];
    if (side !== undefined && corner !== undefined && liesAlong(side, corner, weldMm)) {
      through[Math.min(i, j)]?.push(corner);
    }
  });
  let at = -1;
  return rings.map((ring) =>
    ring.flatMap((corner) => {
      at += 1;
      const side = sides[at];
      return [corner, ...byPlace(side, through[at] ?? [])];
    }),
  );
}

function liesAlong(side: Side, [x, y]: Vec2, weldMm: number): boolean {
  const place = placeOf(side, x, y);
  return place > 0 && place < 1 && Math.abs(leftOf(side, x, y)) <= weldMm;
}

function byPlace(side: Side | undefined, corners: readonly Vec2[]): readonly Vec2[] {
  if (side === undefined) return corners;
  return [...corners].sort((p, q) => placeOf(side, p[0], p[1]) - placeOf(side, q[0], q[1]));
}

const isRing = (ring: Ring): boolean => ring.length >= 3;

const withoutRepeats = (ring: Ring): Ring => ring.filter((corner, i) => corner !== (ring[i + 1] ?? ring[0]));

const boxOfPoint = ([x, y]: Vec2): Box => ({ minX: x, minY: y, maxX: x, maxY: y });
