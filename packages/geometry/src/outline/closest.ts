// The narrowest place between two convex pieces that do not overlap; mm.

import type { Box } from './box.ts';
import { sideMeetsBox } from './box.ts';
import type { Edge, Rim, Side } from './edge.ts';
import { FULL_TURN, leftOf, placeOf, xAt, yAt } from './edge.ts';
import type { Piece, PolygonPiece } from './piece.ts';

/** A place on the boundary of a piece. */
export interface Foot {
  readonly edge: Edge;
  readonly at: number;
  readonly x: number;
  readonly y: number;
}

export interface Narrowest {
  readonly gapMm: number;
  readonly onA: Foot;
  readonly onB: Foot;
}

/** The narrowest place between `a` and `b`; undefined when they overlap, or are further apart than `reachMm`. */
export function narrowestBetween(a: Piece, b: Piece, reachMm: number, noiseMm: number): Narrowest | undefined {
  const found = narrowest(a, b, reachMm, noiseMm);
  return found !== undefined && found.gapMm <= reachMm ? found : undefined;
}

function narrowest(a: Piece, b: Piece, reachMm: number, noiseMm: number): Narrowest | undefined {
  if (a.kind === 'disc') {
    return b.kind === 'disc' ? betweenRims(a.rim, b.rim, noiseMm) : turned(sideToRim(b, a.rim, noiseMm));
  }
  return b.kind === 'disc' ? sideToRim(a, b.rim, noiseMm) : betweenPolygons(a, b, reachMm, noiseMm);
}

const turned = (found: Narrowest | undefined): Narrowest | undefined =>
  found && { gapMm: found.gapMm, onA: found.onB, onB: found.onA };

function betweenRims(a: Rim, b: Rim, noiseMm: number): Narrowest | undefined {
  const gapMm = Math.hypot(b.x - a.x, b.y - a.y) - a.radiusMm - b.radiusMm;
  if (gapMm < -noiseMm) return undefined;
  const towards = Math.atan2(b.y - a.y, b.x - a.x);
  return { gapMm: Math.max(0, gapMm), onA: rimFoot(a, towards), onB: rimFoot(b, towards + Math.PI) };
}

function sideToRim(polygon: PolygonPiece, rim: Rim, noiseMm: number): Narrowest | undefined {
  if (polygon.edges.every((side) => leftOf(side, rim.x, rim.y) > 0)) return undefined;
  const onA = nearestFoot(polygon.edges, rim.x, rim.y);
  if (onA === undefined) return undefined;
  const gapMm = distanceTo(onA, rim.x, rim.y) - rim.radiusMm;
  if (gapMm < -noiseMm) return undefined;
  return { gapMm: Math.max(0, gapMm), onA, onB: rimFoot(rim, Math.atan2(onA.y - rim.y, onA.x - rim.x)) };
}

/** From each corner of one to the nearest place of the other, both ways: between convex polygons that is enough. */
function betweenPolygons(a: PolygonPiece, b: PolygonPiece, reachMm: number, noiseMm: number): Narrowest | undefined {
  const apartMm = Math.max(apartAcross(a, b), apartAcross(b, a));
  if (apartMm < -noiseMm || apartMm > reachMm) return undefined;
  const [ofA, ofB] = [sidesNear(a, b, reachMm + noiseMm), sidesNear(b, a, reachMm + noiseMm)];
  const fromA = cornerToSides(ofA, ofB);
  const fromB = turned(cornerToSides(ofB, ofA));
  return fromA === undefined || (fromB !== undefined && fromB.gapMm < fromA.gapMm) ? fromB : fromA;
}

/** The sides of `piece` that come within reach of the box of the other. */
const sidesNear = (piece: PolygonPiece, other: Box, reachMm: number): readonly Side[] =>
  piece.edges.filter((side) => sideMeetsBox(side, other, reachMm));

/** The widest strip beside a side of `a` that separates it from `b`, mm; below 0 when none does. */
function apartAcross(a: PolygonPiece, b: PolygonPiece): number {
  let widest = Number.NEGATIVE_INFINITY;
  for (const side of a.edges) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const { ax, ay } of b.edges) nearest = Math.min(nearest, -leftOf(side, ax, ay));
    widest = Math.max(widest, nearest);
  }
  return widest;
}

/** The narrowest place from a corner of one to a side of the other; undefined when it has no corner or no side. */
function cornerToSides(corners: readonly Side[], sides: readonly Side[]): Narrowest | undefined {
  let best: Narrowest | undefined;
  for (const edge of corners) {
    const { ax: x, ay: y } = edge;
    const onB = nearestFoot(sides, x, y);
    if (onB === undefined) return undefined;
    const gapMm = distanceTo(onB, x, y);
    if (best === undefined || gapMm < best.gapMm) best = { gapMm, onA: { edge, at: 0, x, y }, onB };
  }
  return best;
}

function nearestFoot(sides: readonly Side[], x: number, y: number): Foot | undefined {
  let best: Side | undefined;
  let bestSq = Number.POSITIVE_INFINITY;
  for (const side of sides) {
    const at = placeNearest(side, x, y);
    const dx = xAt(side, at) - x;
    const dy = yAt(side, at) - y;
    const distanceSq = dx * dx + dy * dy;
    if (distanceSq < bestSq) {
      best = side;
      bestSq = distanceSq;
    }
  }
  if (best === undefined) return undefined;
  const at = placeNearest(best, x, y);
  return { edge: best, at, x: xAt(best, at), y: yAt(best, at) };
}

const placeNearest = (side: Side, x: number, y: number): number => Math.min(Math.max(0, placeOf(side, x, y)), 1);

function rimFoot(rim: Rim, angle: number): Foot {
  const at = ((angle % FULL_TURN) + FULL_TURN) % FULL_TURN;
  return { edge: rim, at, x: xAt(rim, at), y: yAt(rim, at) };
}

const distanceTo = (foot: Foot, x: number, y: number): number => Math.hypot(foot.x - x, foot.y - y);
