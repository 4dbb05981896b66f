// A photo that the device has no room for says so, as one without a code does; it never stops what is read after it.

import { afterEach, expect, it, vi } from 'vitest';
import { readPhoto } from './read-photo.ts';

afterEach(() => vi.unstubAllGlobals());

it('opened, and too large to be scaled: no code, and the picture is let go', async () => {
  const close = vi.fn();
  const opened = { width: 30_000, height: 30_000, close };
  vi.stubGlobal('createImageBitmap', async (_: unknown, scaled?: object) => {
    if (scaled !== undefined) throw new RangeError('no room');
    return opened;
  });
  expect(await readPhoto(new Blob())).toEqual({ kind: 'no-code' });
  expect(close).toHaveBeenCalledOnce();
});

it('that no browser opens is told as that', async () => {
  vi.stubGlobal('createImageBitmap', () => Promise.reject(new Error('no picture')));
  expect(await readPhoto(new Blob())).toEqual({ kind: 'not-opened' });
});
