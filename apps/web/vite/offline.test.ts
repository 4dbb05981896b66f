// The version of the kept app is another one whenever anything of it is, the worker's own script too.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { withFilesOf } from './offline.ts';

function folderOf(files: Readonly<Record<string, string>>): string {
  const dir = mkdtempSync(join(tmpdir(), 'cairnmark-'));
  onTestFinished(() => rmSync(dir, { recursive: true }));
  mkdirSync(join(dir, 'assets'));
  mkdirSync(join(dir, '.vite'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(dir, name), text);
  return dir;
}

const APP = { 'index.html': 'page', 'assets/a.js': 'a', 'assets/a.js.map': '{}', '.vite/manifest.json': '{}' };
const version = (files: Readonly<Record<string, string>>, worker: string): string =>
  /^const VERSION = "(\w{12})";/.exec(withFilesOf(folderOf(files), worker))?.[1] ?? 'none';

it('is the same for the same app, and another one for each change', () => {
  const told = [
    version(APP, 'worker'),
    version({ ...APP, 'assets/a.js.map': '{ }', 'service-worker.js': 'of before' }, 'worker'),
    version(APP, 'worker, mended'),
    version({ ...APP, 'index.html': 'another page' }, 'worker'),
    version({ ...APP, 'assets/a.js': 'b' }, 'worker'),
  ];
  expect(told[1]).toBe(told[0]);
  expect(new Set(told).size).toBe(4);
  expect(told).not.toContain('none');
});

it('the files are those beside the page, without what only developers look into', () => {
  expect(withFilesOf(folderOf(APP), 'worker')).toMatch(/\nconst FILES = \["assets\/a\.js"\];\nworker$/);
});
