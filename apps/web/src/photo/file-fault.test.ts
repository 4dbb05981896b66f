import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fileFault, uprightWidth } from './file-fault.ts';
import { focal35Of } from './focal.ts';

const PHOTO = readFileSync(new URL('../../../../tests/corpus/photos/20261-05-top.jpg', import.meta.url));

/** The head of a PNG (ISO/IEC 15948, 11.2.2). */
const png = (width: number, height: number): Uint8Array => {
  const head = Buffer.from('\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\0\0\0\0\0\x08\x02\0\0\0\0\0\0\0', 'latin1');
  head.writeUInt32BE(width, 16);
  head.writeUInt32BE(height, 20);
  return head;
};

it('a photo is none by its name, but by its first bytes', () => {
  expect(fileFault(PHOTO)).toBeNull();
  expect(fileFault(Buffer.from('Dear class, this is a letter.'))?.fault).toBe('not-a-photo');
  expect(fileFault(new Uint8Array())?.fault).toBe('not-a-photo');
  expect(fileFault(Buffer.from('GIF89a\x07\0\x05\0\0\0\0', 'latin1'))?.fault).toBe('not-a-photo');
  expect(fileFault(Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'))?.fault).toBe('heic');
});

it('48 million pixels are opened, 81 million are not', () => {
  expect(fileFault(png(8000, 6000))).toBeNull();
  expect(fileFault(png(9000, 9000))).toEqual({ fault: 'too-large', details: { widthPx: 9000, heightPx: 9000 } });
});

// EXIF 2.32: a camera held on its side writes the picture lying down, and orientation 6.
const held = (orientation: number): Uint8Array =>
  Buffer.concat([
    PHOTO.subarray(0, 2),
    Buffer.from([0xff, 0xe1, 0, 64]),
    Buffer.from('Exif\0\0MM\0*\0\0\0\x08\0\x02', 'latin1'),
    Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0]),
    Buffer.from([0x87, 0x69, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38, 0, 0, 0, 0, 0, 1]),
    Buffer.from([0xa4, 0x05, 0, 3, 0, 0, 0, 1, 0, 26, 0, 0, 0, 0, 0, 0]),
    PHOTO.subarray(2),
  ]);

it('the width is that of the picture the right way up', () => {
  expect(uprightWidth(PHOTO)).toBe(1632);
  expect(uprightWidth(held(1))).toBe(1632);
  expect(uprightWidth(held(6))).toBe(1224);
  expect(uprightWidth(Buffer.from('no photo'))).toBeNull();
});

it('reads the focal length, and goes on without one', async () => {
  expect(await focal35Of(held(1))).toBe(26);
  expect(await focal35Of(PHOTO)).toBeNull();
  expect(await focal35Of(png(1632, 1224))).toBeNull();
});
