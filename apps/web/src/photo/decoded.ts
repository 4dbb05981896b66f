// A file as pixels, no wider than they are measured. The browser turns the picture the right way up by itself.

import type { Photo } from '@cairnmark/photo';
import { uprightWidth } from './file-fault.ts';

/** px. What the figures of the photo package were measured at; more takes longer and tells little more. */
const WIDTH_PX = 1632;

/** null: the browser cannot open it. */
export async function decoded(file: Blob, bytes: Uint8Array): Promise<Photo | null> {
  const width = uprightWidth(bytes);
  const smaller = width !== null && width > WIDTH_PX ? { resizeWidth: WIDTH_PX, resizeQuality: 'high' as const } : {};
  const picture = await createImageBitmap(file, smaller).catch(() => null);
  if (picture === null) return null;
  try {
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (context === null) return null;
    // What a picture leaves clear is paper.
    context.fillStyle = 'white';
    context.fillRect(0, 0, picture.width, picture.height);
    context.drawImage(picture, 0, 0);
    const { data } = context.getImageData(0, 0, picture.width, picture.height);
    return { width: picture.width, height: picture.height, data };
  } finally {
    picture.close();
  }
}
