// Prints what we say of random stacks by what the simulation makes of them. Takes minutes.
//
//   npm run -s simulate                  the stacks of the tests
//   npm run -s simulate -- 200 31415     200 stacks of another seed

import { fileURLToPath } from 'node:url';
import { bundle } from '../../tools/bundle.mjs';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const load = await bundle('simulation', ['random-stacks', 'comparison', 'table'], HERE);
const { STACKS } = await load('random-stacks');
const { comparedStacks } = await load('comparison');
const { tableOf } = await load('table');

const [count = STACKS.count, seed = STACKS.seed] = process.argv.slice(2).map(Number);
const start = performance.now();
const stacks = comparedStacks(seed, count);
const seconds = Math.round((performance.now() - start) / 1000);
process.stdout.write(
  `${count} stacks of 3 to 8 pieces, seed ${seed}, 5 s each; ${seconds} s of work\n\n${tableOf(stacks)}\n`,
);
