// Outlines for tests: boxes, regular polygons, discs, turned, shifted and snapped to a grid; mm.

import type { Outline, Vec2 } from '@cairnmark/geometry';

export type Polygon = Extract<Outline, { kind: 'polygon' }>;

export const polygon = (points: readonly Vec2[]): Polygon => ({ kind: 'polygon', points });

export const disc = (x: number, y: number, radiusMm: number): Outline => ({ kind: 'disc', centre: [x, y], radiusMm });

/** A box from its lower left corner. */
export const box = (x: number, y: number, width: number, depth: number): Polygon =>
  polygon([
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ]);

/** A regular polygon by its circumradius; its first corner lies in the direction `turnRad`. */
export const ngon = (x: number, y: number, radius: number, corners: number, turnRad: number): Polygon =>
  polygon(
    Array.from({ length: corners }, (_, k): Vec2 => {
      const angle = turnRad + (2 * Math.PI * k) / corners;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );

/** The outline with every point moved by `move`; a disc keeps its radius. */
export const moved = (outline: Outline, move: (p: Vec2) => Vec2): Outline =>
  outline.kind === 'disc'
    ? { ...outline, centre: move(outline.centre) }
    : { ...outline, points: outline.points.map(move) };

export const shift =
  (dx: number, dy: number) =>
  ([x, y]: Vec2): Vec2 => [x + dx, y + dy];

export const turn =
  (turnRad: number) =>
  ([x, y]: Vec2): Vec2 => [
    x * Math.cos(turnRad) - y * Math.sin(turnRad),
    x * Math.sin(turnRad) + y * Math.cos(turnRad),
  ];

/** All coordinates and radii as whole multiples of `grid`; a power of two makes them exact. */
export const snapped = (outlines: readonly Outline[], grid: number): readonly Outline[] => {
  const snap = (v: number): number => Math.round(v / grid) * grid;
  return outlines.map((outline) => {
    const onGrid = moved(outline, ([x, y]) => [snap(x), snap(y)]);
    return onGrid.kind === 'disc' ? { ...onGrid, radiusMm: snap(onGrid.radiusMm) } : onGrid;
  });
};

/** The way round one outline by itself. */
export function perimeterOf(outline: Outline): number {
  if (outline.kind === 'disc') return 2 * Math.PI * outline.radiusMm;
  const { points } = outline;
  return points.reduce((total, [x, y], i) => {
    const [bx, by] = points[(i + 1) % points.length]!;
    return total + Math.hypot(bx - x, by - y);
  }, 0);
}
