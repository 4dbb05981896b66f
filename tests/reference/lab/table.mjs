// Prints what the points lab answers by what trying everything says. A file a table: X-table.ts, which exports
//
//   export const title = 'what is held against what';
//   export function table(share: number): string      share: of the family, from 0 to 1
//
//   npm run -s lab             whole families; some seconds
//   npm run -s lab -- 0.1      a tenth of them

import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { bundle } from '../../tools/bundle.mjs';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const tables = readdirSync(HERE).flatMap((file) => /^(.*-table)\.ts$/.exec(file)?.[1] ?? []);
const load = await bundle('lab', tables, HERE);
const share = Number(process.argv[2] ?? 1);
for (const name of tables) {
  const start = performance.now();
  const { title, table } = await load(name);
  const text = table(share);
  process.stdout.write(`${title}; ${Math.round((performance.now() - start) / 1000)} s of work\n\n${text}\n\n`);
}
