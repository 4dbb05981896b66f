// A path as points, and the area inside it, in mm and mm2.

import type { Vec2 } from '@cairnmark/geometry';
import { add2, cross2, length2, scale2, sub2 } from '@cairnmark/geometry';
import type { Path, PathStep } from './path.ts';

/**
 * Points along the path, so many that no curve is off the straight lines between them by more than `sagittaMm`. The start
 * of a closed path is not repeated at its end. A chord over 1/n of a cubic is off by at most its greatest second
 * derivative over 8 n^2, and that is at most 6 times the greater second difference of its control points.
 */
export function flattenPath(path: Path, sagittaMm: number): readonly Vec2[] {
  const points: Vec2[] = [path.start];
  let at = path.start;
  for (const step of path.steps) {
    points.push(...pointsOf(at, step, sagittaMm));
    at = step.to;
  }
  const [first, last] = [path.start, at];
  return path.closed && points.length > 1 && first[0] === last[0] && first[1] === last[1]
    ? points.slice(0, -1)
    : points;
}

/** The area inside a closed path that runs counter-clockwise, exactly, curves included (Green's theorem). */
export function pathAreaMm2({ start, steps }: Path): number {
  let [at, twiceMm2]: [Vec2, number] = [[0, 0], 0];
  for (const step of steps) {
    const to = sub2(step.to, start);
    twiceMm2 += step.kind === 'line' ? cross2(at, to) : twiceUnder(at, sub2(step.c1, start), sub2(step.c2, start), to);
    at = to;
  }
  return twiceMm2 / 2;
}

function pointsOf(from: Vec2, step: PathStep, sagittaMm: number): readonly Vec2[] {
  if (step.kind === 'line') return [step.to];
  const { c1, c2, to } = step;
  const bend = Math.max(secondDifference(from, c1, c2), secondDifference(c1, c2, to));
  const pieces = Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * sagittaMm))));
  return Array.from({ length: pieces }, (_, k) =>
    k === pieces - 1 ? to : alongCubic(from, c1, c2, to, (k + 1) / pieces),
  );
}

const secondDifference = (a: Vec2, b: Vec2, c: Vec2): number => length2(sub2(add2(a, c), scale2(b, 2)));

function alongCubic(a: Vec2, b: Vec2, c: Vec2, d: Vec2, t: number): Vec2 {
  const s = 1 - t;
  const [wa, wb, wc, wd] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return [wa * a[0] + wb * b[0] + wc * c[0] + wd * d[0], wa * a[1] + wb * b[1] + wc * c[1] + wd * d[1]];
}

/** Twice the area between a cubic and the origin: the integral of x dy - y dx along it. */
function twiceUnder(a: Vec2, b: Vec2, c: Vec2, d: Vec2): number {
  const near = 6 * cross2(a, b) + 3 * cross2(a, c) + cross2(a, d);
  return (near + 3 * cross2(b, c) + 3 * cross2(b, d) + 6 * cross2(c, d)) / 10;
}
