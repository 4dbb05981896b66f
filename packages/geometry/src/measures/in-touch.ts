// How pieces move on the table when one kind turns out larger: pieces set side by side push each other along, and one
// that stands on others goes with them. A wall of five equal boxes grows by five times what one box grows, as a tower
// does. Plane of the table; mm of movement for each mm of a reading.

import type { Vec2 } from '../kernel/vec.ts';
import { add2, scale2, sub2 } from '../kernel/vec.ts';
import type { Stack } from '../stack/types.ts';
import { besideEachOther } from './beside.ts';

/** How a piece holds on to another. Where ways to a piece differ, the firmer one decides, in this order. */
const HOLDS = ['pushes', 'carries', 'looks-flush'] as const;

/** `pushes`, `looks-flush`: outlines touch along the unit vector `normal`. `carries`: one stands on the other. */
export type Link =
  | { readonly to: number; readonly hold: 'pushes' | 'looks-flush'; readonly normal: Vec2 }
  | { readonly to: number; readonly hold: 'carries' };

/** Movement of each piece, by index. */
export type Drift = readonly Vec2[];

/** For each piece, the pieces that it touches. */
export function linksOf(stack: Stack): readonly (readonly Link[])[] {
  const links: Link[][] = stack.pieces.map(() => []);
  for (const { upper, lower } of stack.supports) {
    if (lower === 'table') continue;
    links[upper]?.push({ to: lower, hold: 'carries' });
    links[lower]?.push({ to: upper, hold: 'carries' });
  }
  for (const { first, second, pushes, direction } of besideEachOther(stack)) {
    const hold = pushes ? 'pushes' : 'looks-flush';
    links[first]?.push({ to: second, hold, normal: direction });
    links[second]?.push({ to: first, hold, normal: scale2(direction, -1) });
  }
  return links;
}

/**
 * The movement that keeps pieces in touch. `growth` says how far the surface of a piece moves out along a level
 * direction. Each group of linked pieces keeps its middle; where links close a ring, the least firm gives way.
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

/** Gives every piece linked to `start` its movement, along the firmest links first. */
function spreadFrom(
  start: number,
  links: readonly (readonly Link[])[],
  growth: (piece: number, direction: Vec2) => number,
  drift: (Vec2 | undefined)[],
): readonly number[] {
  const group: number[] = [];
  const waiting: Record<Link['hold'], Move[]> = { pushes: [], carries: [], 'looks-flush': [] };
  const firmest = (): Move | undefined =>
    HOLDS.map((hold) => waiting[hold])
      .find((moves) => moves.length > 0)
      ?.pop();
  for (let next: Move | undefined = { piece: start, movement: STILL }; next !== undefined; next = firmest()) {
    const { piece, movement } = next;
    if (drift[piece] !== undefined) continue;
    drift[piece] = movement;
    group.push(piece);
    for (const link of links[piece] ?? []) {
      const away = link.hold === 'carries' ? STILL : pushAlong(piece, link.to, link.normal, growth);
      waiting[link.hold].push({ piece: link.to, movement: add2(movement, away) });
    }
  }
  return group;
}

interface Move {
  readonly piece: number;
  readonly movement: Vec2;
}

/** How two pieces that touch move apart when both grow. */
function pushAlong(
  piece: number,
  other: number,
  normal: Vec2,
  growth: (piece: number, direction: Vec2) => number,
): Vec2 {
  return scale2(normal, growth(piece, normal) + growth(other, scale2(normal, -1)));
}
