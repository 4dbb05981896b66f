// The boundaries of polygons and discs as curves over x: straight lines and half circles, with what the slab integral
// asks of them; mm.

import type { Shape } from './slab-union.ts';

/** `turns` is 1 where the inside of a ring that runs counter-clockwise lies above, -1 where below. */
export type Curve = { readonly from: number; readonly to: number; readonly turns: number } & (
  | { readonly kind: 'line'; readonly y: number; readonly slope: number }
  | { readonly kind: 'half'; readonly x: number; readonly y: number; readonly r: number; readonly up: 1 | -1 }
);

/** The curves of a shape; upright sides are none. */
export function curvesOf(shape: Shape): readonly Curve[] {
  if (shape.kind === 'disc') {
    const [[x, y], r] = [shape.centre, shape.radiusMm];
    return ([-1, 1] as const).map((up) => ({ kind: 'half', from: x - r, to: x + r, turns: -up, x, y, r, up }));
  }
  const { points } = shape;
  return points.flatMap(([ax, ay], i): Curve[] => {
    const [bx, by] = points[(i + 1) % points.length]!;
    if (ax === bx) return [];
    const [from, to, y, turns] = ax < bx ? [ax, bx, ay, 1] : [bx, ax, by, -1];
    return [{ kind: 'line', from, to, turns, y, slope: (by - ay) / (bx - ax) }];
  });
}

export function heightAt(curve: Curve, x: number): number {
  if (curve.kind === 'line') return curve.y + curve.slope * (x - curve.from);
  const off = x - curve.x;
  return curve.y + curve.up * Math.sqrt(Math.max(0, (curve.r - off) * (curve.r + off)));
}

/** The integral of the height between two places. */
export function areaBelow(curve: Curve, a: number, b: number): number {
  if (curve.kind === 'line') return ((heightAt(curve, a) + heightAt(curve, b)) / 2) * (b - a);
  const { x, y, r, up } = curve;
  const half = (at: number): number => {
    const off = Math.min(r, Math.max(-r, at - x));
    const height = Math.sqrt((r - off) * (r + off));
    return (off * height + r * r * Math.atan2(off, height)) / 2;
  };
  return y * (b - a) + up * (half(b) - half(a));
}

export function lengthOver(curve: Curve, a: number, b: number): number {
  if (curve.kind === 'line') return Math.hypot(1, curve.slope) * (b - a);
  const angle = (at: number): number => Math.atan2(at - curve.x, curve.up * (heightAt(curve, at) - curve.y));
  return curve.r * (angle(b) - angle(a));
}

/** Where two curves cross, by x; a place too many does no harm. */
export function crossingsOf(a: Curve, b: Curve): readonly number[] {
  if (a.kind === 'line' && b.kind === 'line') {
    const apart = heightAt(b, a.from) - a.y;
    return a.slope === b.slope ? [] : within(a, b, [a.from + apart / (a.slope - b.slope)]);
  }
  if (a.kind === 'line') return crossingsOf(b, a);
  if (b.kind === 'line') return within(a, b, lineThroughCircle(a, b));
  return within(a, b, circleThroughCircle(a, b));
}

const within = (a: Curve, b: Curve, places: readonly number[]): readonly number[] =>
  places.filter((x) => x > Math.max(a.from, b.from) && x < Math.min(a.to, b.to));

function lineThroughCircle(
  { x, y, r }: Extract<Curve, { kind: 'half' }>,
  line: Extract<Curve, { kind: 'line' }>,
): readonly number[] {
  const steep = Math.hypot(1, line.slope);
  const off = (heightAt(line, x) - y) / steep;
  if (Math.abs(off) >= r) return [];
  const half = Math.sqrt((r - off) * (r + off)) / steep;
  const foot = x - (off * line.slope) / steep;
  return [foot - half, foot + half];
}

function circleThroughCircle(
  a: Extract<Curve, { kind: 'half' }>,
  b: Extract<Curve, { kind: 'half' }>,
): readonly number[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const apart = Math.hypot(dx, dy);
  if (apart === 0 || apart >= a.r + b.r || apart <= Math.abs(a.r - b.r)) return [];
  const foot = (apart + ((a.r - b.r) * (a.r + b.r)) / apart) / 2;
  const half = Math.sqrt(Math.max(0, (a.r - foot) * (a.r + foot)));
  return [a.x + (dx * foot - dy * half) / apart, a.x + (dx * foot + dy * half) / apart];
}
