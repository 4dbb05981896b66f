// Real pictures, from Debian's opencv-doc (Apache-2.0 and BSD-3-clause by its copyright file): see tests/tools/pictures.mjs.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Photo } from '@cairnmark/photo';
import jpeg from 'jpeg-js';
import { hasPictures, PICTURES_FOLDER } from '../../tools/pictures.mjs';

/** Files large enough to be photographs or full screens, by their path in the folder; none where the package is not installed. */
export function pictureNames(): readonly string[] {
  if (!hasPictures()) return [];
  return readdirSync(PICTURES_FOLDER, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.jpe?g$/i.test(name) && statSync(join(PICTURES_FOLDER, name)).size >= LEAST_BYTES)
    .sort();
}

/** Smaller ones are icons and letters. */
const LEAST_BYTES = 40_000;

/** As the app would hand it on: shrunk to some 1632 px. */
export function readPicture(name: string): Photo {
  const bytes = readFileSync(join(PICTURES_FOLDER, name));
  const { width, height, data } = jpeg.decode(bytes, { useTArray: true, formatAsRGBA: true, tolerantDecoding: true });
  return shrunk({ width, height, data: new Uint8ClampedArray(data) }, LONG_SIDE_PX);
}

export const LONG_SIDE_PX = 1632;

/** Each new pixel is the mean of the area of the old picture that it covers; a small picture stays as it is. */
function shrunk(photo: Photo, longPx: number): Photo {
  const scale = Math.max(photo.width, photo.height) / longPx;
  if (scale <= 1) return photo;
  const [width, height] = [Math.round(photo.width / scale), Math.round(photo.height / scale)];
  const [across, down] = [spans(photo.width, width), spans(photo.height, height)];
  const data = new Uint8ClampedArray(4 * width * height);
  down.forEach((rows, y) => {
    across.forEach((columns, x) => {
      const sum = [0, 0, 0, 0];
      for (const [row, tall] of rows) {
        for (const [column, wide] of columns) {
          const at = 4 * (row * photo.width + column);
          for (let k = 0; k < 4; k += 1) sum[k]! += tall * wide * photo.data[at + k]!;
        }
      }
      data.set(sum, 4 * (y * width + x));
    });
  });
  return { width, height, data };
}

/** For each new pixel of a row: the old ones that it covers, and the share that each has in it. */
function spans(from: number, to: number): readonly (readonly (readonly [index: number, share: number])[])[] {
  const step = from / to;
  return Array.from({ length: to }, (_, k) => {
    const [begin, end] = [k * step, Math.min(from, (k + 1) * step)];
    const first = Math.floor(begin);
    return Array.from({ length: Math.ceil(end) - first }, (_, i) => {
      const index = first + i;
      return [index, (Math.min(end, index + 1) - Math.max(begin, index)) / (end - begin)] as const;
    });
  });
}
