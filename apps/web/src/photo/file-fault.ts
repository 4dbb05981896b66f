// What a file is, told from its first bytes whatever its name: a photo that can be opened here, or why not.

import type { PhotoFault } from '@cairnmark/words';
import { imageSize } from 'image-size';

export interface FileFault {
  readonly fault: PhotoFault;
  readonly details: Readonly<Record<string, number>>;
}

/** null: a photo, as far as its head tells. */
export function fileFault(bytes: Uint8Array): FileFault | null {
  const size = sizeOf(bytes);
  if (size === null) return { fault: 'not-a-photo', details: {} };
  const { type, width: widthPx, height: heightPx } = size;
  if (type === 'heic' || type === 'heif') return { fault: 'heic', details: {} };
  if (!OPENED.includes(type)) return { fault: 'not-a-photo', details: {} };
  return widthPx * heightPx > MOST_PX ? { fault: 'too-large', details: { widthPx, heightPx } } : null;
}

/** Width of the picture the right way up, px; null where its head does not tell. */
export function uprightWidth(bytes: Uint8Array): number | null {
  const size = sizeOf(bytes);
  if (size === null) return null;
  return (size.orientation ?? UPRIGHT) >= FIRST_ON_ITS_SIDE ? size.height : size.width;
}

const OPENED = ['jpg', 'png', 'webp'];

/** Pixels. Of 48 million a browser takes 380 MB while it opens them (measured), and a school's tablet has little more. */
const MOST_PX = 50e6;

/** Of the eight ways a camera was held (EXIF 2.32, Orientation) the last four have the picture lie on its side. */
const UPRIGHT = 1;
const FIRST_ON_ITS_SIDE = 5;

interface Size {
  readonly type: string;
  readonly width: number;
  readonly height: number;
  readonly orientation?: number;
}

function sizeOf(bytes: Uint8Array): Size | null {
  try {
    const { type = '', ...size } = imageSize(bytes);
    return { ...size, type };
  } catch {
    return isHeic(bytes) ? { type: 'heic', width: 0, height: 0 } : null;
  }
}

/** Brands of ISO/IEC 23008-12, for files whose sizes are not found. */
const HEIC_BRANDS = ['heic', 'heix', 'hevc', 'heim', 'heis', 'mif1', 'msf1'];

function isHeic(bytes: Uint8Array): boolean {
  const text = String.fromCharCode(...bytes.subarray(4, 12));
  return text.startsWith('ftyp') && HEIC_BRANDS.includes(text.slice(4));
}
