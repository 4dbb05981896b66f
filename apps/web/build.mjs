// Builds the app in the two forms in which it is handed out, and says where they are and how large.
//
//   node apps/web/build.mjs [FOLDER]
//
// Into the folder, which is emptied first (dist unless another is named):
//
//   dist/web             a folder for any web host: the page, its parts, and the service worker that keeps them on a device
//   dist/cairnmark.html  all of it in one file, for a USB stick

import { readdirSync, rmSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));
const dist = resolve(process.argv[2] ?? fileURLToPath(new URL('../../dist', import.meta.url)));

process.env['NODE_ENV'] = 'production';
rmSync(dist, { recursive: true, force: true });
// Without what only developers and tests look into.
await build({ root, logLevel: 'error', build: { outDir: join(dist, 'web'), manifest: false, sourcemap: false } });
await build({ root, logLevel: 'error', mode: 'one-file', build: { outDir: dist, emptyOutDir: false } });

const FORMS = { web: 'a folder for any web host', 'cairnmark.html': 'one file, for a USB stick' };
for (const [name, purpose] of Object.entries(FORMS)) {
  const path = join(dist, name);
  process.stdout.write(`${relative('', path).padEnd(20)} ${megabytes(path).padStart(7)}  ${purpose}\n`);
}

/** @param {string} path */
function megabytes(path) {
  const files = statSync(path).isFile()
    ? [path]
    : readdirSync(path, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ parentPath, name }) => join(parentPath, name));
  return `${(files.reduce((bytes, file) => bytes + statSync(file).size, 0) / 1e6).toFixed(1)} MB`;
}
