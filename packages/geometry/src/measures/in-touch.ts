// How pieces move on the table when one kind turns out larger: boxes set side by side push each other along, and a piece
// that stands on others goes with them. A wall of five equal boxes grows by five times what one box grows, as a tower
// does. Plane of the table; mm of movement for each mm of a reading.

import { CONTACT_MM, PARALLEL_RAD } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add2, dot3, flatten, scale2, sub2, sub3 } from '../kernel/vec.ts';
import type { FlatFace } from '../solids/types.ts';
import type { PlacedPiece, Stack } from '../stack/types.ts';

/** A piece beside another (`normal`: unit, level, towards it), or one above or below it (null: they go together). */
export interface Link {
  readonly to: number;
  readonly normal: Vec2 | null;
}

/** Movement of each piece, by index. */
export type Drift = readonly Vec2[];

/** For each piece, the pieces that it touches. */
export function linksOf(stack: Stack): readonly (readonly Link[])[] {
  const links: Link[][] = stack.pieces.map(() => []);
  const join = (a: PlacedPiece | undefined, b: PlacedPiece | undefined, normal: Vec2 | null): void => {
    if (a === undefined || b === undefined) return;
    links[a.index]?.push({ to: b.index, normal });
    links[b.index]?.push({ to: a.index, normal: normal && scale2(normal, -1) });
  };
  for (const { upper, lower } of stack.supports) {
    if (lower !== 'table') join(stack.pieces[upper], stack.pieces[lower], null);
  }
  for (const { first, second } of stack.faceContacts) {
    const [a, b] = [stack.pieces[first], second === 'table' ? undefined : stack.pieces[second]];
    if (a !== undefined && b !== undefined) join(a, b, levelNormal(a, b));
  }
  return links;
}

/**
 * The movement that keeps pieces in touch. `growth` says how far the surface of a piece moves out along a level
 * direction. Each group of linked pieces keeps its middle; where links close a ring, one of them gives way.
 */
export function driftOf(
  links: readonly (readonly Link[])[],
  growth: (piece: number, direction: Vec2) => number,
): Drift {
  const drift: (Vec2 | undefined)[] = links.map(() => undefined);
  for (const start of links.keys()) {
    if (drift[start] !== undefined) continue;
    const group = spreadFrom(start, links, growth, drift);
    const middle = scale2(
      group.reduce<Vec2>((total, piece) => add2(total, drift[piece] ?? STILL), STILL),
      1 / group.length,
    );
    for (const piece of group) drift[piece] = sub2(drift[piece] ?? STILL, middle);
  }
  return drift.map((movement) => movement ?? STILL);
}

const STILL: Vec2 = [0, 0];

/** Gives every piece linked to `start` its movement, first along pieces side by side, then up and down. */
function spreadFrom(
  start: number,
  links: readonly (readonly Link[])[],
  growth: (piece: number, direction: Vec2) => number,
  drift: (Vec2 | undefined)[],
): readonly number[] {
  const group: number[] = [];
  const beside: { piece: number; movement: Vec2 }[] = [{ piece: start, movement: STILL }];
  const carried: { piece: number; movement: Vec2 }[] = [];
  for (let next = beside.pop(); next !== undefined; next = beside.pop() ?? carried.pop()) {
    const { piece, movement } = next;
    if (drift[piece] !== undefined) continue;
    drift[piece] = movement;
    group.push(piece);
    for (const { to, normal } of links[piece] ?? []) {
      if (normal === null) carried.push({ piece: to, movement });
      else beside.push({ piece: to, movement: add2(movement, scale2(normal, pushAlong(piece, to, normal, growth))) });
    }
  }
  return group;
}

/** How far two pieces side by side move apart. */
function pushAlong(
  piece: number,
  other: number,
  normal: Vec2,
  growth: (piece: number, direction: Vec2) => number,
): number {
  return growth(piece, normal) + growth(other, scale2(normal, -1));
}

/** The normal of the upright faces by which `a` and `b` touch, from `a` to `b`; null when no such faces touch. */
function levelNormal(a: PlacedPiece, b: PlacedPiece): Vec2 | null {
  const face = a.flatFaces.find(
    ({ normal }, index) =>
      Math.abs(normal[2]) <= PARALLEL_RAD && b.flatFaces.some((other) => faceEachOther(a.flatFaces[index], other)),
  );
  return face === undefined ? null : flatten(face.normal);
}

function faceEachOther(face: FlatFace | undefined, other: FlatFace): boolean {
  return (
    face !== undefined &&
    dot3(face.normal, other.normal) <= -Math.cos(PARALLEL_RAD) &&
    Math.abs(dot3(face.normal, sub3(pointOf(other), pointOf(face)))) <= CONTACT_MM
  );
}

function pointOf(face: FlatFace): Vec3 {
  return face.kind === 'disc' ? face.centre : (face.corners[0] ?? [0, 0, 0]);
}
