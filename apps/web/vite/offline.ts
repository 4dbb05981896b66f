// Writes the service worker beside the built page: its script, with the list of all files of this build in front of it.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Plugin } from 'vite';
import { transformWithOxc } from 'vite';

const WORKER = 'service-worker.js';

/** `source`: the worker's script, from the root of the app. */
export function offline(source: string): Plugin {
  const place = { root: '' };
  return {
    name: 'cairnmark:offline',
    apply: 'build',
    configResolved: ({ root }) => {
      place.root = root;
    },
    // When all is written: what lies in the folder is what a host serves.
    writeBundle: {
      order: 'post',
      async handler({ dir = '' }) {
        const path = join(place.root, source);
        const { code } = await transformWithOxc(readFileSync(path, 'utf8'), path, { sourcemap: false });
        writeFileSync(join(dir, WORKER), withFilesOf(dir, code));
      },
    },
  };
}

/**
 * The worker with its version and its files in front of it. The version is worked out from the contents, its own too: the
 * same files are the same version, and two workers that differ never fill the same shelf.
 */
export function withFilesOf(dir: string, worker: string): string {
  const files = filesIn(dir);
  const hash = createHash('sha256').update(worker);
  for (const file of files) hash.update(file).update(readFileSync(join(dir, file)));
  const beside = files.filter((file) => file !== 'index.html');
  const version = hash.digest('hex').slice(0, 12);
  return `const VERSION = ${JSON.stringify(version)};\nconst FILES = ${JSON.stringify(beside)};\n${worker}`;
}

/** What the app itself asks for, or the browser for it; not what only developers look into. */
function filesIn(dir: string): readonly string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dir.length + 1)
        .split(sep)
        .join('/'),
    )
    .filter((file) => !file.endsWith('.map') && !file.startsWith('.vite/') && file !== WORKER)
    .sort();
}
