// Where two pieces come near each other without sharing a side (a corner at a side, two rims), the narrowest line between
// them is a link: it joins them, and is counted on both of its sides, as the two mouths of the gap; mm.
// Pieces that touch at a point have a link of no length there.

import { boxOfSide } from './box.ts';
import type { Foot, Narrowest } from './closest.ts';
import { narrowestBetween } from './closest.ts';
import { coverByDisc, coverByPolygon } from './cover-side.ts';
import type { Edge, Side } from './edge.ts';
import { endOf, leftOf, lengthBetween, mmPerPlace, sideBetween } from './edge.ts';
import { nearBoxes } from './near.ts';
import type { Piece } from './piece.ts';
import { NO_SPANS } from './spans.ts';
import type { EdgesLeft } from './walk.ts';

/** A narrow place between pieces `a` and `b`. */
export interface NarrowPlace extends Narrowest {
  readonly a: number;
  readonly b: number;
}

/** What links are laid over: pieces and, after them, fillings; what is left of their boundaries; who is near whom. */
export interface LinkGround {
  readonly pieces: readonly Piece[];
  readonly left: readonly EdgesLeft[];
  readonly near: readonly (readonly number[])[];
  /** True for pairs that need no link: they overlap, share a side, or have a filling between them. */
  readonly areJoined: (i: number, j: number) => boolean;
  readonly reachMm: number;
  readonly roundingMm: number;
  readonly noiseMm: number;
  readonly nodeMm: number;
}

/** The narrowest place between every two of the first `count` pieces that come within reach and are not joined yet. */
export function narrowPlaces(count: number, ground: LinkGround): readonly NarrowPlace[] {
  const { pieces, left, near, areJoined, noiseMm } = ground;
  const reachMm = Math.max(ground.reachMm, noiseMm);
  const isFree = left.map((edges) => edges.some((spans) => spans.length > 0));
  const places: NarrowPlace[] = [];
  pieces.slice(0, count).forEach((piece, a) => {
    if (!isFree[a]) return;
    for (const b of near[a] ?? []) {
      const other = pieces[b];
      if (b <= a || b >= count || other === undefined || !isFree[b] || areJoined(a, b)) continue;
      const found = narrowestBetween(piece, other, reachMm, noiseMm);
      if (found !== undefined) places.push({ ...found, a, b });
    }
  });
  return places;
}

/**
 * The places where a link is laid: those whose line runs free from one free boundary to the other, and crosses no
 * shorter link. Where an outline is cut into pieces, only the narrowest of neighbouring places counts.
 */
export function linksAt(places: readonly NarrowPlace[], ground: LinkGround): readonly NarrowPlace[] {
  const rising = places
    .filter((place) => isOpen(place, ground) && !isLesser(place, ground))
    .sort((p, q) => p.gapMm - q.gapMm);
  const lines = rising.map(lineOf);
  const near = nearBoxes(lines.map(boxOfSide), 0);
  const kept = new Set<number>();
  lines.forEach((line, i) => {
    const blocked = (near[i] ?? []).some((j) => {
      const other = lines[j];
      return kept.has(j) && other !== undefined && doCross(line, other);
    });
    if (!blocked) kept.add(i);
  });
  return rising.filter((_, i) => kept.has(i));
}

function isOpen(place: NarrowPlace, ground: LinkGround): boolean {
  const { a, b, onA, onB, gapMm } = place;
  if (!isFreeAt(a, onA, ground) || !isFreeAt(b, onB, ground)) return false;
  if (gapMm <= ground.nodeMm) return true;
  const line = lineOf(place);
  return !(ground.near[a] ?? []).some((k) => k !== b && coversSome(ground.pieces[k], line, ground));
}

/** True when a foot lies on what is left of its piece; at a corner, of either side. */
function isFreeAt(i: number, { edge, at }: Foot, { pieces, left, nodeMm }: LinkGround): boolean {
  const isLeft = (other: Edge, place: number): boolean => {
    const nearby = nodeMm / mmPerPlace(other);
    return (left[i]?.[other.index] ?? NO_SPANS).some(({ from, to }) => from - nearby <= place && place <= to + nearby);
  };
  if (isLeft(edge, at)) return true;
  const nearby = nodeMm / mmPerPlace(edge);
  const edges = pieces[i]?.edges ?? [];
  const [before, after] = [edges.at(edge.index - 1) ?? edge, edges[edge.index + 1] ?? edges[0] ?? edge];
  return (at <= nearby && isLeft(before, endOf(before))) || (at >= endOf(edge) - nearby && isLeft(after, 0));
}

function coversSome(piece: Piece | undefined, line: Side, { roundingMm, noiseMm, nodeMm }: LinkGround): boolean {
  if (piece === undefined) return false;
  const cover =
    piece.kind === 'disc' ? coverByDisc(line, piece.rim, roundingMm) : coverByPolygon(line, piece.edges, true, noiseMm);
  return cover !== undefined && lengthBetween(line, cover.from, cover.to) > nodeMm;
}

/** True when another piece of the same outline, on which the place also lies, comes as near or overlaps. */
function isLesser({ a, b, onA, onB, gapMm }: NarrowPlace, ground: LinkGround): boolean {
  return isBeaten(a, onA, b, gapMm, ground) || isBeaten(b, onB, a, gapMm, ground);
}

function isBeaten(a: number, foot: Foot, b: number, gapMm: number, ground: LinkGround): boolean {
  const { pieces, near, areJoined, noiseMm } = ground;
  const [piece, other] = [pieces[a], pieces[b]];
  return (near[a] ?? []).some((s) => {
    const sibling = pieces[s];
    if (piece === undefined || other === undefined || sibling?.owner !== piece.owner || s === b) return false;
    if (!liesOn(sibling, foot, noiseMm)) return false;
    const found = areJoined(s, b) ? undefined : narrowestBetween(sibling, other, Number.POSITIVE_INFINITY, noiseMm);
    return found === undefined || found.gapMm < gapMm - noiseMm || (found.gapMm <= gapMm + noiseMm && s < a);
  });
}

function liesOn(piece: Piece, { x, y }: Foot, noiseMm: number): boolean {
  if (piece.kind === 'disc') return Math.hypot(x - piece.rim.x, y - piece.rim.y) <= piece.rim.radiusMm + noiseMm;
  return piece.edges.every((side) => leftOf(side, x, y) >= -noiseMm);
}

const lineOf = ({ onA, onB }: NarrowPlace): Side => sideBetween([onA.x, onA.y], [onB.x, onB.y], 0, false);

/** True when two lines cross inside both. */
function doCross(p: Side, q: Side): boolean {
  return leftOf(p, q.ax, q.ay) * leftOf(p, q.bx, q.by) < 0 && leftOf(q, p.ax, p.ay) * leftOf(q, p.bx, p.by) < 0;
}
