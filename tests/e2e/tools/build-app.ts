// The web app, built as it is shipped. In a process of its own: a test run would set it up for development.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from '../../tools/files.ts';

/**
 * Builds the app into .cache/web-`name` and gives that folder. Two runs of one name in one clone would step on each other.
 * Throws an Error with what the build said when it fails.
 */
export function buildApp(name: string): string {
  const folder = join(ROOT, '.cache', `web-${name}`);
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js');
  const words = ['build', '--logLevel', 'error', '--outDir', folder, '--emptyOutDir'];
  const { status, stdout, stderr } = spawnSync(process.execPath, [vite, ...words], {
    cwd: join(ROOT, 'apps/web'),
    env: { ...process.env, NODE_ENV: 'production', NO_COLOR: '1' },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the web app does not build:\n${stdout}${stderr}`);
  return folder;
}
