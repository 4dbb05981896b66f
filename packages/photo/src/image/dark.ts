// Which pixels are darker than what is around them, whatever the light: adaptive threshold against the mean of a square.
// Source: Bradley and Roth, Adaptive thresholding using the integral image, J. Graphics Tools 12(2), 2007; the sums over
// squares are those of Crow's summed-area tables, 1984.

import type { Grey } from './photo.ts';

/** A mask with a frame of one empty pixel all round: (width + 2) by (height + 2), 1 is dark. */
export interface Mask {
  readonly stride: number;
  readonly rows: number;
  readonly data: Uint8Array;
}

/** Sums of brightness over all rectangles from the upper left corner: (width + 1) by (height + 1). */
export function sumsOf({ width, height, data }: Grey): Uint32Array {
  const stride = width + 1;
  const sums = new Uint32Array(stride * (height + 1));
  for (let y = 0; y < height; y += 1) {
    let row = 0;
    const above = y * stride + 1;
    for (let x = 0; x < width; x += 1) {
      row += data[y * width + x] ?? 0;
      sums[above + stride + x] = (sums[above + x] ?? 0) + row;
    }
  }
  return sums;
}

/** Pixels darker than the mean of the square of `radius` about them by more than `darker` steps of brightness. */
export function darkMask(grey: Grey, sums: Uint32Array, radius: number, darker: number): Mask {
  const { width, height, data } = grey;
  const [stride, sumStride] = [width + 2, width + 1];
  const mask = new Uint8Array(stride * (height + 2));
  for (let y = 0; y < height; y += 1) {
    const top = Math.max(0, y - radius) * sumStride;
    const bottom = Math.min(height, y + radius + 1) * sumStride;
    const rows = (bottom - top) / sumStride;
    for (let x = 0; x < width; x += 1) {
      const left = Math.max(0, x - radius);
      const right = Math.min(width, x + radius + 1);
      // Sums are kept modulo 2^32; their difference is small, so it comes out right.
      const inside =
        ((sums[bottom + right] ?? 0) -
          (sums[bottom + left] ?? 0) -
          (sums[top + right] ?? 0) +
          (sums[top + left] ?? 0)) >>>
        0;
      const least = ((data[y * width + x] ?? 0) + darker) * rows * (right - left);
      if (least < inside) mask[(y + 1) * stride + x + 1] = 1;
    }
  }
  return { stride, rows: height + 2, data: mask };
}
