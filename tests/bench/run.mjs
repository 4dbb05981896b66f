// Runs the benches in this folder and prints one table for each. A bench is a file X.bench.ts that exports
//
//   export const name = 'what is compared';
//   export async function run(report: Report): Promise<void>   (Report: see measure.ts)
//
//   npm run bench              all of them
//   npm run bench -- outline   those whose file name holds "outline"
//
// The sources are bundled first, so that what is timed is plain code as an app would run it.

import { readdirSync } from 'node:fs';
import { loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { bundle } from '../tools/bundle.mjs';

/** @typedef {import('./measure.ts').Row} Row */

const HERE = fileURLToPath(new URL('.', import.meta.url));
const wanted = process.argv[2] ?? '';

const benches = readdirSync(HERE).filter((file) => file.endsWith('.bench.ts') && file.includes(wanted));
if (benches.length === 0) throw new Error(`no bench here has "${wanted}" in its name`);
const load = await bundle(
  'bench',
  benches.map((file) => file.replace(/\.ts$/, '')),
  HERE,
);
process.stdout.write(`Node ${process.versions.node}, load before the first bench ${loadavg()[0]?.toFixed(2)}\n`);
for (const file of benches) {
  const bench = await load(file.replace(/\.ts$/, ''));
  /** @type {Row[]} */
  const rows = [];
  await bench.run((/** @type {Row} */ row) => rows.push(row));
  process.stdout.write(`\n${bench.name}\n${table(rows)}\n`);
}

/** @param {Row[]} rows */
function table(rows) {
  const cells = rows.map(({ label, value, unit, target }) => [label, significant(value), unit, target ?? '']);
  const heads = ['', 'value', 'unit', 'target'];
  const widths = heads.map((head, column) => Math.max(head.length, ...cells.map((row) => (row[column] ?? '').length)));
  return [heads, ...cells]
    .map((row) => row.map((cell, k) => (k === 1 ? cell.padStart(widths[k] ?? 0) : cell.padEnd(widths[k] ?? 0))))
    .map((row) => `  ${row.join('  ').trimEnd()}`)
    .join('\n');
}

/**
 * Three significant digits, no more than a time on a shared machine is worth; whole numbers as they are.
 * @param {number} value
 */
function significant(value) {
  return Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(3)));
}
