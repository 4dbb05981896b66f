// How much script the app loads, against limits, and against the sizes recorded in sizes.json: growth of more than a tenth
// has to be meant. When it is, or when the app has become smaller, record the sizes as they are:
//
//   CAIRNMARK_RECORD_SIZES=1 npm run e2e -- sizes

import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, inject, it } from 'vitest';
import { sizesOf } from './tools/sizes.ts';

/**
 * kB after gzip; a screen counts with the first screen and with all that it may load later on the page, but for 3D models,
 * for what the door for photos has of its own, and for graphs.
 */
const LIMITS: Readonly<Record<string, number>> = {
  'first screen': 110,
  Build: 310,
  'Trace it, beside Build': 40,
  'graphs, beside the Board': 120,
  'the worker that scores': 120,
  'the worker that prints': 120,
  'the worker for photos': 60,
};

const RECORD = fileURLToPath(new URL('sizes.json', import.meta.url));
const GROWTH = 1.1;

const sizes = sizesOf(inject('builtFolder'));
if (process.env['CAIRNMARK_RECORD_SIZES'] === '1') writeFileSync(RECORD, `${JSON.stringify(sizes, null, 2)}\n`);
const recorded: Readonly<Record<string, number>> = JSON.parse(readFileSync(RECORD, 'utf8'));

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

it.each(Object.entries(LIMITS))('%s: at most %d kB', (part, limit) => {
  const bytes = sizes[part] ?? Number.NaN;
  expect(bytes, `${part} loads ${kB(bytes)}, and may load ${limit} kB`).toBeLessThanOrEqual(limit * 1000);
});

it.each(Object.entries(sizes))('%s has not grown by more than a tenth', (part, bytes) => {
  const before = recorded[part] ?? Number.NaN;
  const said = `${part} has grown from ${kB(before)} to ${kB(bytes)}. If that is meant, see the head of sizes.e2e.ts`;
  expect(bytes, said).toBeLessThanOrEqual(GROWTH * before);
});
