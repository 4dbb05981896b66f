// Why no sheet is found in a picture: it is too dark, or nothing in it is sharp.

import type { Photo } from '@cairnmark/photo';
import { greyOf } from '@cairnmark/photo';
import type { PhotoFault } from '@cairnmark/words';

/** null: nothing is wrong with the picture as such. */
export function pictureFault(photo: Photo): PhotoFault | null {
  const grey = greyOf(photo);
  const [dark, bright] = [quantile(grey.data, FEW), quantile(grey.data, 1 - FEW)];
  if (bright < LEAST_BRIGHT) return 'dark';
  const steps = stepsAcross(grey.data, grey.width, grey.height);
  return quantile(steps, 1 - FEWER) < SHARP_SHARE * (bright - dark) ? 'blurred' : null;
}

/** Share of the pixels left out at either end: specks and reflections. */
const FEW = 0.01;
/** Share of the pixels that lie on the sharpest edges; the rims of eight markers are some thousandths of a picture. */
const FEWER = 0.001;
/** Brightness of 255 that paper in a photo has at least, in the shade of a tower too (seen so far: 90 and more). */
const LEAST_BRIGHT = 60;
/** px between which an edge in focus has gone from dark to bright. */
const ACROSS_PX = 3;
/** An edge in focus makes nearly the whole step from dark to bright there; one blurred over ten pixels a third of it. */
const SHARP_SHARE = 0.35;

function stepsAcross(data: ArrayLike<number>, width: number, height: number): Uint8Array {
  const steps = new Uint8Array(width * height);
  for (let y = 0; y < height - ACROSS_PX; y += 1) {
    for (let x = 0; x < width - ACROSS_PX; x += 1) {
      const at = y * width + x;
      const here = data[at] ?? 0;
      const right = Math.abs((data[at + ACROSS_PX] ?? 0) - here);
      const below = Math.abs((data[at + ACROSS_PX * width] ?? 0) - here);
      steps[at] = Math.max(right, below);
    }
  }
  return steps;
}

/** The value that this share of the bytes does not exceed. */
function quantile(data: ArrayLike<number>, share: number): number {
  const counts = new Array<number>(256).fill(0);
  for (let k = 0; k < data.length; k += 1) {
    const value = data[k] ?? 0;
    counts[value] = (counts[value] ?? 0) + 1;
  }
  let left = share * data.length;
  for (const [value, count] of counts.entries()) {
    left -= count;
    if (left <= 0) return value;
  }
  return 255;
}
