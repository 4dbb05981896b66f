// What is drawn over the canvas as SVG, as plain data, and a few shapes of it. px from the upper left corner of the canvas.

import type { Vec2 } from '@cairnmark/geometry';
import { ringPath } from '../drawing/paths.ts';
import type { Box } from './label-layout.ts';

export type Mark =
  | { readonly kind: 'path'; readonly look: string; readonly d: string }
  | { readonly kind: 'circle'; readonly look: string; readonly at: Vec2; readonly radiusPx: number }
  | { readonly kind: 'text'; readonly look: string; readonly at: Vec2; readonly text: string };

/** The box round some places. */
export function boxRound(places: readonly Vec2[]): Box {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

/** A triangle with its tip at `to`, pointing the way from `from`. */
export function headPath(from: Vec2, to: Vec2, lengthPx: number, halfPx: number): string {
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, y]: Vec2 = far > 0 ? [(to[0] - from[0]) / far, (to[1] - from[1]) / far] : [0, 1];
  const [backX, backY] = [to[0] - x * lengthPx, to[1] - y * lengthPx];
  const corners: readonly Vec2[] = [
    to,
    [backX - y * halfPx, backY + x * halfPx],
    [backX + y * halfPx, backY - x * halfPx],
  ];
  return ringPath(corners, 1);
}

export const boxPath = ({ left, top, width, height }: Box): string =>
  ringPath(
    [
      [left, top],
      [left + width, top],
      [left + width, top + height],
      [left, top + height],
    ],
    1,
  );
