// Second method for the union of polygons and true discs, without a boolean library: a slab integral of covered length.
// Upright cuts through all corners, crossings and ends of discs part the plane into slabs; in a slab the boundaries keep
// their order, and what is covered lies between some of them. Area and length of straight lines and arcs in closed form;
// upright boundaries are where the covered stretch jumps from one slab to the next. Written without the code under test.

import type { Curve } from './slab-curves.ts';
import { areaBelow, crossingsOf, curvesOf, heightAt, lengthOver } from './slab-curves.ts';

export type Shape =
  | { readonly kind: 'polygon'; readonly points: readonly (readonly [number, number])[] }
  | { readonly kind: 'disc'; readonly centre: readonly [number, number]; readonly radiusMm: number };

/** A stretch that is covered, between two curves. */
interface Covered {
  readonly low: Curve;
  readonly high: Curve;
}

/** Stretches nearer than this are one, mm: the rounding of a turned corner, a thousand times over. */
const ONE_MM = 1e-11;

export function slabUnion(given: readonly Shape[]): { areaMm2: number; perimeterMm: number } {
  const shapes = aboutFirst(given);
  const curves = shapes.map(curvesOf);
  const all = curves.flat();
  const cuts = cutsOf(all, shapes);
  let [areaMm2, perimeterMm] = [0, 0];
  let before: readonly Covered[] = [];
  for (const [k, right] of cuts.entries()) {
    const left = cuts[k - 1] ?? right;
    const covered = left < right ? coveredIn(curves, left, right) : [];
    for (const { low, high } of covered) {
      areaMm2 += areaBelow(high, left, right) - areaBelow(low, left, right);
      perimeterMm += lengthOver(high, left, right) + lengthOver(low, left, right);
    }
    perimeterMm += jump(before, covered, left);
    before = covered;
    if (k === cuts.length - 1) perimeterMm += jump(covered, [], right);
  }
  return { areaMm2, perimeterMm };
}

/** Moved so that the first point is the origin: exact for coordinates on a grid. */
function aboutFirst(shapes: readonly Shape[]): readonly Shape[] {
  const [first] = shapes.map((shape) => (shape.kind === 'disc' ? shape.centre : shape.points[0]));
  const [ox, oy] = first ?? [0, 0];
  return shapes.map((shape) =>
    shape.kind === 'disc'
      ? { ...shape, centre: [shape.centre[0] - ox, shape.centre[1] - oy] }
      : { ...shape, points: shape.points.map(([x, y]) => [x - ox, y - oy]) },
  );
}

function cutsOf(all: readonly Curve[], shapes: readonly Shape[]): readonly number[] {
  const cuts = all.flatMap(({ from, to }) => [from, to]);
  for (const shape of shapes) if (shape.kind === 'polygon') cuts.push(...shape.points.map(([x]) => x));
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) if (a.from < b.to && b.from < a.to) cuts.push(...crossingsOf(a, b));
  });
  cuts.sort((a, b) => a - b);
  return cuts.filter((cut, k) => k === 0 || cut - cuts[k - 1]! > ONE_MM);
}

/** What is covered in a slab, from low to high, each shape by the non-zero rule, joined where stretches overlap. */
function coveredIn(curves: readonly (readonly Curve[])[], left: number, right: number): readonly Covered[] {
  // Not half-way, where a disc may touch a side just so.
  const middle = left + (right - left) * 0.381966;
  const own: Covered[] = [];
  for (const shape of curves) {
    const across = shape
      .filter(({ from, to }) => from < middle && middle < to)
      .map((curve) => ({ curve, y: heightAt(curve, middle) }))
      .sort((a, b) => a.y - b.y);
    let turns = 0;
    let low: Curve | undefined;
    for (const { curve } of across) {
      if (turns === 0) low = curve;
      turns += curve.turns;
      if (turns !== 0 || low === undefined) continue;
      if (heightAt(curve, middle) - heightAt(low, middle) > ONE_MM) own.push({ low, high: curve });
    }
  }
  own.sort((a, b) => heightAt(a.low, middle) - heightAt(b.low, middle));
  const joined: Covered[] = [];
  for (const next of own) {
    const last = joined.at(-1);
    if (last === undefined || heightAt(next.low, middle) > heightAt(last.high, middle) + ONE_MM) joined.push(next);
    else if (heightAt(next.high, middle) > heightAt(last.high, middle)) {
      joined[joined.length - 1] = { low: last.low, high: next.high };
    }
  }
  return joined;
}

/** The length on which two covers differ at an upright cut: covered on one side of it only. */
function jump(a: readonly Covered[], b: readonly Covered[], x: number): number {
  const ends = (covers: readonly Covered[]): readonly { y: number; by: number }[] =>
    covers.flatMap(({ low, high }) => [
      { y: heightAt(low, x), by: 1 },
      { y: heightAt(high, x), by: -1 },
    ]);
  const steps = [
    ...ends(a).map(({ y, by }) => ({ y, a: by, b: 0 })),
    ...ends(b).map(({ y, by }) => ({ y, a: 0, b: by })),
  ].sort((p, q) => p.y - q.y);
  let [inA, inB, from, length] = [0, 0, 0, 0];
  for (const step of steps) {
    if (inA > 0 !== inB > 0 && step.y - from > ONE_MM) length += step.y - from;
    inA += step.a;
    inB += step.b;
    from = step.y;
  }
  return length;
}
