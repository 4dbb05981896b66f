// An outline with its whole edge moved out (in, where negative) by a small length: what a tracing would be had its edge
// been read that much further out. Plane of the table, mm.

import type { Outline, PolygonOutline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { add2, cross2, dot2, length2, scale2, sub2 } from '../kernel/vec.ts';

/** `outline` grown by `byMm` all round; corners stay corners. */
export function grownOutline(outline: Outline, byMm: number): Outline {
  return outline.kind === 'disc'
    ? { ...outline, radiusMm: outline.radiusMm + byMm }
    : { kind: 'polygon', points: grownPoints(outline, byMm) };
}

function grownPoints(outline: PolygonOutline, byMm: number): readonly Vec2[] {
  const points = withoutRepeats(outline.points);
  const outward = signedArea(points) >= 0 ? byMm : -byMm;
  return points.map((corner, index) => {
    const before = points.at(index - 1) ?? corner;
    const after = points[(index + 1) % points.length] ?? corner;
    return add2(corner, scale2(cornerMove(normalOf(before, corner), normalOf(corner, after)), outward));
  });
}

/**
 * How a corner moves when both its sides move out by 1: the meeting of the moved sides. Where the ring turns back on
 * itself more sharply than this, the moved sides meet far away; the corner then moves by 1 or less.
 */
const SHARPEST = 0.1;

function cornerMove(before: Vec2, after: Vec2): Vec2 {
  const middle = add2(before, after);
  return scale2(middle, 1 / Math.max(1 + dot2(before, after), SHARPEST));
}

/** Unit normal to the right of the way from `a` to `b`: outward on a ring that runs counter-clockwise. A point has none. */
function normalOf(a: Vec2, b: Vec2): Vec2 {
  const [x, y] = sub2(b, a);
  const length = length2([x, y]);
  return length > 0 ? [y / length, -x / length] : [0, 0];
}

function withoutRepeats(points: readonly Vec2[]): readonly Vec2[] {
  return points.filter(
    (point, index) => length2(sub2(point, points.at(index - 1) ?? point)) > 0 || points.length === 1,
  );
}

function signedArea(points: readonly Vec2[]): number {
  return points.reduce((total, point, index) => total + cross2(points.at(index - 1) ?? point, point), 0) / 2;
}
