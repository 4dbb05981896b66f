// Builds the app in the two forms in which it is handed out, and says where they are and how large.
//
//   node apps/web/build.mjs
//
//   dist/web             a folder for any web host: the page, its parts, and the service worker that keeps them on a device
//   dist/cairnmark.html  all of it in one file, for a USB stick

import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));
const DIST = fileURLToPath(new URL('../../dist', import.meta.url));

process.env['NODE_ENV'] = 'production';
rmSync(DIST, { recursive: true, force: true });
// Without what only developers and tests look into.
await build({ root, logLevel: 'error', build: { outDir: join(DIST, 'web'), manifest: false, sourcemap: false } });
await build({ root, logLevel: 'error', mode: 'one-file', build: { outDir: DIST, emptyOutDir: false } });

const FORMS = { web: 'a folder for any web host', 'cairnmark.html': 'one file, for a USB stick' };
for (const [name, purpose] of Object.entries(FORMS)) {
  process.stdout.write(`${join('dist', name).padEnd(20)} ${megabytes(join(DIST, name)).padStart(7)}  ${purpose}\n`);
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
