// Pictures of everything that is printed, to look at: .cache/pages, a folder for each PDF that the terminal writes for the
// demo class, in both languages and on both papers.
//
//   npm run pages
//   npm run pages -- masters        those alone that have "masters" in their name

import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { hasPoppler, NO_POPPLER } from './poppler.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FOLDER = join(ROOT, '.cache/pages');

/** Dots an inch: enough to read the smallest writing. */
const DPI = 100;

/** The demo class with a kit half as large again, which has nets that no page holds. */
const LARGE = join(FOLDER, 'large.json');
const LARGER = 1.5;

const PRINTED = {
  'nets-mixed': ['--what', 'nets', '--sets', '2'],
  'nets-masters': ['--what', 'nets', '--masters', '--sets', '6'],
  'nets-parts': [LARGE, '--what', 'nets', '--split'],
  sheets: ['--what', 'sheets'],
  'sheets-large-print': ['--what', 'sheets', '--large-print'],
  ground: ['--what', 'ground'],
  'ground-forts': ['--what', 'ground', '--forts'],
  gores: ['--what', 'gores'],
};

const LOOKS = [
  { lang: 'en', paper: 'a4' },
  { lang: 'es', paper: 'letter' },
];

if (!hasPoppler()) throw new Error(NO_POPPLER);
const wanted = process.argv[2] ?? '';
rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
writeFileSync(LARGE, largeClass());
for (const { lang, paper } of LOOKS) {
  for (const [name, words] of Object.entries(PRINTED)) {
    const folder = `${name}-${lang}-${paper}`;
    if (!folder.includes(wanted)) continue;
    mkdirSync(join(FOLDER, folder));
    const pdf = join(FOLDER, `${folder}.pdf`);
    run(process.execPath, ['apps/cli/dist/main.js', 'print', ...words, '--lang', lang, '--paper', paper, '-o', pdf]);
    run('pdftoppm', ['-png', '-gray', '-r', String(DPI), pdf, join(FOLDER, folder, 'page')]);
    process.stdout.write(`.cache/pages/${folder}: ${readdirSync(join(FOLDER, folder)).length} pages\n`);
  }
}

function largeClass() {
  const record = JSON.parse(readFileSync(join(ROOT, 'packages/demo/src/skerry-light.json'), 'utf8'));
  for (const { kit } of record.challenges) {
    for (const { solid } of kit.kinds) {
      for (const size of Object.keys(solid.sizes)) if (size !== 'sides') solid.sizes[size] *= LARGER;
    }
  }
  return JSON.stringify({ ...record, attempts: [], supplies: {} });
}

/**
 * @param {string} program
 * @param {readonly string[]} words
 */
function run(program, words) {
  const { status, stderr } = spawnSync(program, words, { cwd: ROOT, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} ended with ${status}: ${stderr}`);
}
