// From places on the page, and from keys, to places in a photo.

import type { Vec2 } from '@cairnmark/geometry';
import type { Region } from './region.ts';

/** The pixel of the photo under a place on the page; null beside what is shown of it. `overlay` is drawn in pixels of the photo. */
export function onPhoto(overlay: SVGGraphicsElement, [x, y]: Vec2, region: Region): Vec2 | null {
  const matrix = overlay.getScreenCTM();
  if (matrix === null) return null;
  const point = new DOMPoint(x, y).matrixTransform(matrix.inverse());
  const [right, down] = [point.x - region.x, point.y - region.y];
  return right >= 0 && down >= 0 && right <= region.width && down <= region.height ? [point.x, point.y] : null;
}

/** px of the photo: a step of an arrow key, and of one with Shift. */
const STEP_PX = 12;
const SMALL_PX = 1;

const WAYS: Readonly<Record<string, Vec2>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The cross after a key; null: no key for it. It stays on the photo. */
export function moveBy([x, y]: Vec2, key: string, isSmall: boolean, region: Region): Vec2 | null {
  const way = WAYS[key];
  if (way === undefined) return null;
  const step = isSmall ? SMALL_PX : STEP_PX;
  const within = (at: number, from: number, size: number): number => Math.min(from + size, Math.max(from, at));
  return [within(x + way[0] * step, region.x, region.width), within(y + way[1] * step, region.y, region.height)];
}
