// Photos and taps from files, each as what it holds or as a line that says what is wrong with it.

import type { Photo } from '@cairnmark/photo';
import type { TerminalWords } from '@cairnmark/words';
import jpeg from 'jpeg-js';
import type { Io } from '../io.ts';
import { BYTES_MOST } from '../io.ts';
import type { Outcome } from '../read-files.ts';
import type { TapsFile } from './taps-file.ts';
import { tapsFileOf } from './taps-file.ts';

/** Millions of pixels and of bytes that opening a photo may take. */
const MOST_MEGAPIXELS = 50;
const MOST_MEGABYTES = 1024;

export function readPhotoFile(file: string, words: TerminalWords, io: Io): Outcome<Photo> {
  const bytes = bytesOf(file, words, io);
  if (!bytes.ok) return bytes;
  try {
    const { width, height, data } = jpeg.decode(bytes.value, {
      useTArray: true,
      maxResolutionInMP: MOST_MEGAPIXELS,
      maxMemoryUsageInMB: MOST_MEGABYTES,
    });
    return { ok: true, value: { width, height, data: new Uint8ClampedArray(data) } };
  } catch {
    return faultIn(file, words.say('trace.no-jpeg'), words);
  }
}

export function readTapsFile(file: string, help: string, words: TerminalWords, io: Io): Outcome<TapsFile> {
  const bytes = bytesOf(file, words, io);
  if (!bytes.ok) return bytes;
  const value = parsed(bytes.value);
  if (value === undefined) return faultIn(file, words.say('trace.no-json', { help }), words);
  const taps = tapsFileOf(value);
  return typeof taps === 'string'
    ? faultIn(file, words.say('trace.bad', { place: taps, help }), words)
    : { ok: true, value: taps };
}

/** undefined: it is no JSON. */
function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return undefined;
  }
}

function bytesOf(file: string, words: TerminalWords, io: Io): Outcome<Uint8Array> {
  const read = io.readFile(file);
  if (read.ok) return { ok: true, value: read.bytes };
  const sentence =
    read.fault === 'too-large'
      ? words.say('file.too-large', { most: BYTES_MOST / 1_000_000 })
      : words.say(`file.${read.fault}`);
  return faultIn(file, sentence, words);
}

export const faultIn = (file: string, sentence: string, words: TerminalWords): Outcome<never> => ({
  ok: false,
  faults: [words.say('file.line', { file, sentence })],
});
