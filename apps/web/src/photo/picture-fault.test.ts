import { readFileSync } from 'node:fs';
import type { Photo } from '@cairnmark/photo';
import jpeg from 'jpeg-js';
import { describe, expect, it } from 'vitest';
import { pictureFault } from './picture-fault.ts';

const file = readFileSync(new URL('../../../../tests/corpus/photos/20261-05-top.jpg', import.meta.url));
const { width, height, data } = jpeg.decode(file, { useTArray: true });
const photo: Photo = { width, height, data: new Uint8ClampedArray(data) };

const changed = (how: (value: number, at: number) => number): Photo => ({
  ...photo,
  data: photo.data.map((value, at) => (at % 4 === 3 ? value : how(value, at))),
});

describe('what a picture as a whole suffers from', () => {
  it('a sharp photo from nothing', () => {
    expect(pictureFault(photo)).toBeNull();
    expect(pictureFault(changed(() => 255))).toBeNull();
  });

  it('a photo in the dark', () => {
    expect(pictureFault(changed(() => 3))).toBe('dark');
    expect(pictureFault(changed((value) => value / 7))).toBe('dark');
  });

  it('a photo out of focus: each pixel the mean of 31 along each row and column', () => {
    const part = cropped(photo, 500, 350, 480, 360);
    expect(pictureFault(part)).toBeNull();
    expect(pictureFault(alongColumns(alongRows(part)))).toBe('blurred');
  });
});

/** A part with markers in it. */
function cropped(from: Photo, left: number, top: number, width: number, height: number): Photo {
  const rows = Array.from({ length: height }, (_, y) => {
    const at = 4 * ((top + y) * from.width + left);
    return from.data.subarray(at, at + 4 * width);
  });
  const data = new Uint8ClampedArray(4 * width * height);
  for (const [y, row] of rows.entries()) data.set(row, 4 * width * y);
  return { width, height, data };
}

const REACH = 15;

function alongRows(from: Photo): Photo {
  return means(from, 4, (at) => Math.floor(at / (4 * from.width)));
}

function alongColumns(from: Photo): Photo {
  return means(from, 4 * from.width, () => 0);
}

/** `line`: places on different lines are not mixed. */
function means(from: Photo, step: number, line: (at: number) => number): Photo {
  return {
    ...from,
    data: from.data.map((_, at) => {
      let [sum, count] = [0, 0];
      for (let k = -REACH; k <= REACH; k += 1) {
        const other = at + k * step;
        if (other < 0 || other >= from.data.length || line(other) !== line(at)) continue;
        sum += from.data[other] ?? 0;
        count += 1;
      }
      return sum / count;
    }),
  };
}
