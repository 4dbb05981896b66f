// Prints how near the twelve photographed towers come to their truth, and what is measured on real photographs. Takes a minute or two.
//
//   npm run -s photos          20 seeds a tower and noise
//   npm run -s photos -- 5     5 of them

import { fileURLToPath } from 'node:url';
import { bundle } from '../../tools/bundle.mjs';
import { NO_PICTURES } from '../../tools/pictures.mjs';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const load = await bundle('photos', ['accuracy', 'truth', 'table', 'chessboards', 'opencv'], HERE);
const { viewsOf, tried } = await load('accuracy');
const { TOWERS } = await load('truth');
const { tableOf, focalTable, boardTable } = await load('table');
const { measuredBoards } = await load('chessboards');
const { chessboardsThere } = await load('opencv');

const seeds = Number(process.argv[2] ?? 20);
const start = performance.now();
const views = TOWERS.map(viewsOf);
const runs = [0, 1, 2, 4].map((sigmaPx) => {
  const noises = Array.from({ length: sigmaPx === 0 ? 1 : seeds }, (_, seed) => 1000 * (seed + 1));
  const tries = views.flatMap((/** @type {unknown} */ view, /** @type {number} */ k) =>
    noises.map((seed) => tried(view, { seed: seed + k, sigmaPx })),
  );
  return { sigmaPx, tries: tries.length, traced: tries.filter((/** @type {unknown} */ one) => one !== null) };
});
process.stdout.write(
  `${TOWERS.length} towers of 4 pieces, ${seeds} seeds; median / 95 % / most; ` +
    `${Math.round((performance.now() - start) / 1000)} s of work\n\n${tableOf(runs)}\n\n${focalTable(views)}\n`,
);
process.stdout.write(`\n${chessboardsThere ? boardTable(measuredBoards()) : NO_PICTURES}\n`);
