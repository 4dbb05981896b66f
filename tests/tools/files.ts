// The files of a tree as its checks see them: everything that a person wrote, nothing that was installed or built.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NOT_WRITTEN = new Set(['node_modules', 'dist', 'coverage', '.cache', '.git']);

/** The folder of this repository. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Paths below `root`, parted by slashes whatever the system, sorted. */
export function listFiles(root: string, folder = ''): string[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  return entries
    .filter((entry) => !NOT_WRITTEN.has(entry.name))
    .flatMap((entry) => {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      return entry.isDirectory() ? listFiles(root, path) : [path];
    })
    .sort();
}

/** The text of a file below `root`. Throws when there is none. */
export function readText(root: string, path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** True for a test and for what only tests use. */
export const isTest = (path: string): boolean => path.startsWith('tests/') || /\.test\.tsx?$/.test(path);

/** Sources of packages and apps, and the tests. */
export const isTypeScript = (path: string): boolean => /\.tsx?$/.test(path);
