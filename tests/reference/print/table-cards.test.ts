// Table cards as they come out of a printer: their codes are read back by ZXing (C++), which shares nothing with what draws
// them, and their words stand beside.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { demoClass } from '@cairnmark/demo';
import { rulerOf } from '@cairnmark/geometry';
import type { TableCard } from '@cairnmark/print';
import { extentOf, makeSheet, writePdf } from '@cairnmark/print';
import { planWords, printWords, screenWords, wordsFor } from '@cairnmark/words';
import { beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule as prepareReader, readBarcodes } from 'zxing-wasm/reader';
import { prepareZXingModule as prepareWriter, writeBarcode } from 'zxing-wasm/writer';
import { hasPoppler } from '../../tools/poppler.mjs';
import { printOf, textIn } from './poppler.ts';

const WORDS = ['KAVURE', 'MUNTAS', 'PERDUS', 'ZENKAR', 'WEBTUV', 'DRASEN'];
const QUIET = 4;

const wasmOf = (name: 'reader' | 'writer') => ({
  overrides: {
    wasmBinary: readFileSync(
      createRequire(import.meta.url).resolve(`zxing-wasm/${name}/zxing_${name}.wasm`),
    ).buffer.slice(0) as ArrayBuffer,
  },
});

async function cardOf(group: string, word: string): Promise<TableCard> {
  const { symbol } = await writeBarcode(addressOf(word), { format: 'QRCode' });
  const side = symbol.width + 2 * QUIET;
  const isDark = (x: number, y: number): boolean => {
    const [column, row] = [x - QUIET, y - QUIET];
    const inside = column >= 0 && row >= 0 && column < symbol.width && row < symbol.height;
    return inside && symbol.data[row * symbol.width + column] === 0;
  };
  const rows = Array.from({ length: side }, (_, y) => Array.from({ length: side }, (__, x) => isDark(x, y)));
  return { group, word, qr: rows };
}

const addressOf = (word: string): string => `http://192.168.178.24:8080/#word=${word}`;

describe.skipIf(!hasPoppler())('printed table cards', () => {
  beforeAll(() => {
    prepareWriter(wasmOf('writer'));
    prepareReader(wasmOf('reader'));
  });

  it.each(['usual', 'large'] as const)('are read by a camera and by people, in %s print', async (print) => {
    const record = demoClass();
    const cards = await Promise.all(record.groups.map(({ name }, k) => cardOf(name, WORDS[k] ?? '')));
    const words = {
      words: wordsFor('en'),
      printed: printWords('en'),
      plan: planWords('en'),
      screen: screenWords('en'),
    };
    const [challenge] = record.challenges;
    const made = makeSheet('table-cards', {
      ...{ record, challenge: challenge!, ruler: rulerOf('mm'), pupils: 27, netPages: null, cards, words },
      ...{ paper: 'a4', print },
    });
    const pdf = made.ok ? writePdf(made.value, 'Table cards', 'en') : made;
    if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
    const read = await Promise.all(
      Array.from({ length: made.ok ? made.value.length : 0 }, (_, page) => codesOn(pdf.value, page)),
    );
    expect(read.flat().sort()).toEqual(WORDS.map(addressOf).sort());
    const text = textIn(pdf.value);
    for (const { group, word } of cards) {
      expect(text).toContain(group);
      expect(text).toContain(`${word.slice(0, 3)} ${word.slice(3)}`);
    }
  });
});

/** As a camera sees the page: 150 dots an inch. */
async function codesOn(pdf: Uint8Array, page: number): Promise<readonly string[]> {
  const { darkness } = printOf(pdf, page);
  const { widthMm, heightMm } = extentOf({ size: 'a4', orientation: 'portrait' });
  const stepMm = 25.4 / 150;
  const [width, height] = [Math.floor(widthMm / stepMm), Math.floor(heightMm / stepMm)];
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let row = 0; row < height; row += 1) {
    for (let column = 0; column < width; column += 1) {
      const light = 255 * (1 - darkness((column + 0.5) * stepMm, heightMm - (row + 0.5) * stepMm));
      data.fill(light, 4 * (row * width + column), 4 * (row * width + column) + 3);
    }
  }
  const found = await readBarcodes({ data, width, height } as ImageData, { formats: ['QRCode'] });
  return found.map(({ text }) => text);
}
