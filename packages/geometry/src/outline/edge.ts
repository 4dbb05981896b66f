// The boundary of an outline is made of edges: straight sides, or the one rim of a disc. The inside lies on the left.
// A place on a side is the share of it that lies before, from 0 to 1; a place on a rim is its angle, rad, up to a full turn.

import type { Vec2 } from '../kernel/vec.ts';

export interface Side {
  readonly kind: 'side';
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** Unit direction from a to b. */
  readonly ux: number;
  readonly uy: number;
  readonly lengthMm: number;
  /** False when the side stands for a piece of a curve: see ROUND_TURN_RAD. */
  readonly canFace: boolean;
  /** Its place among the edges of its piece. */
  readonly index: number;
}

export interface Rim {
  readonly kind: 'rim';
  readonly x: number;
  readonly y: number;
  readonly radiusMm: number;
  readonly index: 0;
}

export type Edge = Side | Rim;

export const FULL_TURN = 2 * Math.PI;

export function sideBetween(a: Vec2, b: Vec2, index: number, canFace: boolean): Side {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const lengthMm = Math.sqrt(dx * dx + dy * dy);
  const ux = lengthMm > 0 ? dx / lengthMm : 1;
  const uy = lengthMm > 0 ? dy / lengthMm : 0;
  return { kind: 'side', ax: a[0], ay: a[1], bx: b[0], by: b[1], ux, uy, lengthMm, canFace, index };
}

/** The place at which an edge ends; it starts at 0. */
export const endOf = (edge: Edge): number => (edge.kind === 'side' ? 1 : FULL_TURN);

export const xAt = (edge: Edge, at: number): number =>
  edge.kind === 'side' ? edge.ax + (edge.bx - edge.ax) * at : edge.x + edge.radiusMm * Math.cos(at);

export const yAt = (edge: Edge, at: number): number =>
  edge.kind === 'side' ? edge.ay + (edge.by - edge.ay) * at : edge.y + edge.radiusMm * Math.sin(at);

/** mm of boundary to one unit of place. */
export const mmPerPlace = (edge: Edge): number => (edge.kind === 'side' ? edge.lengthMm : edge.radiusMm);

/** mm of boundary between two places of an edge. */
export const lengthBetween = (edge: Edge, from: number, to: number): number => (to - from) * mmPerPlace(edge);

/** How far a point lies to the left of the line of a side, mm: on the inside of its outline. */
export const leftOf = (side: Side, x: number, y: number): number => (y - side.ay) * side.ux - (x - side.ax) * side.uy;

/** The place on the line of a side straight across from a point; below 0 and above 1 off its ends. */
export const placeOf = (side: Side, x: number, y: number): number =>
  ((x - side.ax) * side.ux + (y - side.ay) * side.uy) / side.lengthMm;

/** The share of a stretch in the area it bounds (Green): half the integral of x dy - y dx, mm2, about the origin. */
export function areaUnder(edge: Edge, from: number, to: number): number {
  if (edge.kind === 'side') return ((edge.ax * edge.by - edge.ay * edge.bx) * (to - from)) / 2;
  const { x, y, radiusMm } = edge;
  const across = x * (Math.sin(to) - Math.sin(from)) - y * (Math.cos(to) - Math.cos(from));
  return (radiusMm * (radiusMm * (to - from) + across)) / 2;
}
