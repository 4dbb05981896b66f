// Files to choose in place of a photo: pictures painted in the page, and heads of files made by hand.

import type { Page } from 'playwright-core';

interface File {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const file = (name: string, buffer: Buffer): File => ({ name, mimeType: 'image/jpeg', buffer });

/** ISO/IEC 14496-12: a box of type `ftyp` with its brand. */
export const HEIC = file('photo.heic', Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0mif1heic', 'latin1'));

export const TEXT = file('photo.jpg', Buffer.from('Dear class, this is a letter.\n'.repeat(9)));

/** A PNG of 9000 by 9000 pixels, as far as its head tells (ISO/IEC 15948, 11.2.2): 81 million. */
export const HUGE = file(
  'huge.png',
  Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1'),
    Buffer.from([0, 0, 0x23, 0x28, 0, 0, 0x23, 0x28, 8, 2, 0, 0, 0, 0, 0, 0, 0]),
  ]),
);

/** The first bytes of a photo alone. */
export const damaged = (photo: Buffer): File => file('damaged.jpg', photo.subarray(0, 900));

/** All one colour. */
export const plain = (page: Page, width: number, height: number, colour: string): Promise<File> =>
  painted(page, { width, height, colour });

/** A photo out of focus by so many pixels. */
export const blurred = (page: Page, photo: Buffer, byPx: number): Promise<File> =>
  painted(page, { width: 1632, height: 1224, colour: 'white', photo, byPx });

/**
 * A photo as a camera keeps it that was held on its side: its pixels lie on their side, and the file says so (EXIF 2.32:
 * orientation 6, a quarter turn clockwise sets it right; focal length 26 mm as on film).
 */
export async function onItsSide(page: Page, photo: Buffer): Promise<File> {
  const { buffer } = await painted(page, { width: 1224, height: 1632, colour: 'white', photo, turned: true });
  return file('held.jpg', Buffer.concat([buffer.subarray(0, 2), EXIF, buffer.subarray(2)]));
}

/** Big-endian TIFF in an APP1 segment: IFD0 with orientation and the way to the Exif IFD, which has the focal length alone. */
const EXIF = Buffer.concat([
  Buffer.from([0xff, 0xe1, 0, 64]),
  Buffer.from('Exif\0\0MM\0*', 'latin1'),
  Buffer.from([0, 0, 0, 8, 0, 2]),
  Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0]),
  Buffer.from([0x87, 0x69, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38]),
  Buffer.from([0, 0, 0, 0, 0, 1]),
  Buffer.from([0xa4, 0x05, 0, 3, 0, 0, 0, 1, 0, 26, 0, 0]),
  Buffer.from([0, 0, 0, 0]),
]);

interface Painting {
  readonly width: number;
  readonly height: number;
  readonly colour: string;
  readonly photo?: Buffer;
  readonly byPx?: number;
  /** A quarter turn against the clock. */
  readonly turned?: boolean;
}

async function painted(page: Page, { photo, ...how }: Painting): Promise<File> {
  const source = photo === undefined ? null : photo.toString('base64');
  const bytes = await page.evaluate(
    async ({ width, height, colour, byPx = 0, turned = false, base64 }) => {
      const canvas = new OffscreenCanvas(width, height);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('nothing can be painted here');
      pen.fillStyle = colour;
      pen.fillRect(0, 0, width, height);
      if (base64 !== null) {
        const blob = await (await fetch(`data:image/jpeg;base64,${base64}`)).blob();
        const picture = await createImageBitmap(blob);
        if (byPx > 0) pen.filter = `blur(${byPx}px)`;
        if (turned) pen.setTransform(0, -1, 1, 0, 0, height);
        pen.drawImage(picture, 0, 0);
      }
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
      const text = new Uint8Array(await blob.arrayBuffer()).reduce((all, byte) => all + String.fromCharCode(byte), '');
      return btoa(text);
    },
    { ...how, base64: source },
  );
  return file('painted.jpg', Buffer.from(bytes, 'base64'));
}
