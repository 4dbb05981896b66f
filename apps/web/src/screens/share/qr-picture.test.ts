// What is drawn is read back by another program: ZXing (C++), which shares nothing with the library that draws.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { demoClass } from '@cairnmark/demo';
import type { Attempt } from '@cairnmark/engine';
import { encodeCode, printsOf } from '@cairnmark/formats';
import { decodeQR } from 'qr/decode.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { QUIET, qrPicture } from './qr-picture.ts';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
/** As long as codes of tries get, and with every sign. */
const LONGEST = `CAIRN1:${SIGNS.repeat(27).slice(0, 1200)}`;

const demo = demoClass();
const codes = demo.attempts.map(codeOf);

beforeAll(() => {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  const wasmBinary = readFileSync(wasm);
  prepareZXingModule({ overrides: { wasmBinary: wasmBinary.buffer.slice(0) as ArrayBuffer } });
});

describe('a code', () => {
  it.each([...codes, 'CAIRN1:0', LONGEST])('is read back by another program: %#', async (text) => {
    const image = pixelsOf(text);
    const [read] = await readBarcodes(image as ImageData, { formats: ['QRCode'] });
    expect(read?.text).toBe(text);
    expect(read?.ecLevel).toBe('M');
  });

  it.each([...codes, LONGEST])('is read back by the reader of this app: %#', (text) => {
    expect(decodeQR(pixelsOf(text))).toBe(text);
  });

  it('has quiet ground all round', () => {
    const { size } = qrPicture('CAIRN1:0');
    const dark = squaresOf('CAIRN1:0');
    const [least, most] = [Math.min(...dark.flat()), Math.max(...dark.flat())];
    expect([least, most]).toEqual([QUIET, size - QUIET - 1]);
  });

  it('of the longest text has squares that a screen shows with four points each', () => {
    expect(qrPicture(LONGEST).size * 4).toBeLessThan(480);
  });
});

function codeOf(attempt: Attempt): string {
  const challenge = demo.challenges.find(({ id }) => id === attempt.challenge)!;
  const group = demo.groups.find(({ id }) => id === attempt.group);
  const code = encodeCode({ attempt, prints: printsOf(challenge, group) });
  if (!code.ok) throw new RangeError('too large');
  return code.value;
}

/** The dark squares, by the path that draws them. */
function squaresOf(text: string): readonly (readonly [number, number])[] {
  const bars = [...qrPicture(text).path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)];
  expect(bars.map(([bar]) => bar).join('')).toBe(qrPicture(text).path);
  return bars.flatMap(([, x, y, length]) =>
    Array.from({ length: Number(length) }, (_, k) => [Number(x) + k, Number(y)] as const),
  );
}

/** Three points a square, dark on white. */
function pixelsOf(text: string): { data: Uint8ClampedArray; width: number; height: number } {
  const scale = 3;
  const width = qrPicture(text).size * scale;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [x, y] of squaresOf(text)) {
    for (let k = 0; k < scale * scale; k += 1) {
      const at = (y * scale + Math.floor(k / scale)) * width + x * scale + (k % scale);
      data.set([0, 0, 0, 255], at * 4);
    }
  }
  return { data, width, height: width };
}
