// A photograph as plain pixels, and its brightness. Frame of a picture: pixels, x right, y down; pixel i covers [i, i + 1), so
// its middle is at i + 0.5 and the picture's at half its width.

/** What `createImageBitmap` and every decoder of JPEG give: four bytes a pixel, red, green, blue, opacity, row by row. */
export interface Photo {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** One number a pixel, 0 to 255, row by row. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Float32Array;
}

/** Brightness on the picture's own (sRGB) scale. */
export interface Grey extends Plane {
  readonly data: Uint8Array;
}

/** Brightness by the weights of ITU-R BT.601, in whole steps. */
export function greyOf({ width, height, data }: Photo): Grey {
  const grey = new Uint8Array(width * height);
  for (let k = 0, at = 0; k < grey.length; k += 1, at += 4) {
    grey[k] = (RED * (data[at] ?? 0) + GREEN * (data[at + 1] ?? 0) + BLUE * (data[at + 2] ?? 0) + HALF) >> SHIFT;
  }
  return { width, height, data: grey };
}

/** The least of red, green and blue: high on white paper alone, low on wood, cloth and coloured card however bright. */
export function whitenessOf({ width, height, data }: Photo): Grey {
  const least = new Uint8Array(width * height);
  for (let k = 0, at = 0; k < least.length; k += 1, at += 4) {
    least[k] = Math.min(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0);
  }
  return { width, height, data: least };
}

/** 0.299, 0.587 and 0.114 in shares of 65 536; they add up to it. */
const [RED, GREEN, BLUE] = [19595, 38470, 7471];
const SHIFT = 16;
const HALF = 1 << (SHIFT - 1);
