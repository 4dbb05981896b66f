// A built app as it would be after a change of everything: the same parts, each under another name.

import { cpSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';

const TEXT = /\.(js|css|html|json)$/;

/** Puts a copy of the app in `from` in place of what lies in `to`; its page says `mark` as `data-version`. */
export function putNewer(from: string, to: string, mark: string): void {
  rmSync(to, { recursive: true, force: true });
  cpSync(from, to, { recursive: true, filter: (path) => !path.endsWith('.map') && basename(path) !== '.vite' });
  const parts = new Map(readdirSync(join(to, 'assets')).map((name) => [name, name.replace(/\.(?=\w+$)/, `${mark}.`)]));
  for (const [old, name] of parts) renameSync(join(to, 'assets', old), join(to, 'assets', name));
  const pages = readdirSync(to, { recursive: true, encoding: 'utf8' }).filter((path) => TEXT.test(path));
  for (const path of pages.map((name) => join(to, name))) {
    const text = readFileSync(path, 'utf8')
      .replaceAll(/[\w.-]+\.(?:js|css|wasm)/g, (name) => parts.get(name) ?? name)
      .replace(/(const VERSION = "\w+)/, `$1${mark}`)
      .replace('<html ', `<html data-version="${mark}" `);
    writeFileSync(path, text);
  }
}
