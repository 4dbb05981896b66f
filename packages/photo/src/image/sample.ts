// Brightness between pixels, by bilinear interpolation of the pixels' middles. Pixels; outside, the border pixels go on.

import type { Plane } from './photo.ts';

/** Brightness at a point of the picture. */
export function brightnessAt({ width, height, data }: Plane, x: number, y: number): number {
  const fromLeft = clamp(x - 0.5, width - 1);
  const fromTop = clamp(y - 0.5, height - 1);
  const [column, row] = [Math.floor(fromLeft), Math.floor(fromTop)];
  const [right, down] = [fromLeft - column, fromTop - row];
  const at = row * width + column;
  const across = column + 1 < width ? 1 : 0;
  const below = row + 1 < height ? width : 0;
  const upper = (data[at] ?? 0) * (1 - right) + (data[at + across] ?? 0) * right;
  const lower = (data[at + below] ?? 0) * (1 - right) + (data[at + below + across] ?? 0) * right;
  return upper * (1 - down) + lower * down;
}

const clamp = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
