// Rings and lines as the text of an SVG path.

import type { Vec2 } from '@cairnmark/geometry';

/** `scale` drawing units a unit of the ring. */
export const ringPath = (ring: readonly Vec2[], scale: number): string => `${linePath(ring, scale)}Z`;

export const linePath = (points: readonly Vec2[], scale: number): string =>
  points.map(([x, y], k) => `${k === 0 ? 'M' : 'L'}${rounded(x * scale)} ${rounded(y * scale)}`).join('');

/** Two decimals: a hundredth of a pixel. */
export const rounded = (value: number): number => Math.round(value * 100) / 100 + 0;

/** The middle of the box round a ring. */
export function ringCentre(ring: readonly Vec2[]): Vec2 {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
