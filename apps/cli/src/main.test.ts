// The built program, started as a person starts it: `npm run build` comes first.

import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

const MAIN = fileURLToPath(new URL('../dist/main.js', import.meta.url));

const started = (...args: string[]) => spawnSync(process.execPath, [MAIN, ...args], { encoding: 'utf8' });

/** Addresses of all scripts that the program reads in a call. */
function scriptsRead(...args: string[]): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'scripts-'));
  try {
    const env = { ...process.env, NODE_V8_COVERAGE: folder };
    expect(spawnSync(process.execPath, [MAIN, ...args], { env }).status).toBe(0);
    return readdirSync(folder).flatMap((name) => {
      const { result } = JSON.parse(readFileSync(join(folder, name), 'utf8')) as { result: { url: string }[] };
      return result.map(({ url }) => url);
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const isSolver = (url: string): boolean => url.includes('/node_modules/highs/');

describe('the built program', () => {
  beforeAll(() => {
    if (!existsSync(MAIN)) throw new RangeError('apps/cli/dist/main.js is missing: npm run build');
  });

  it('scores the demo class', () => {
    const { status, stdout, stderr } = started('score');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^Skerry Light\nAll data of this class is invented\.\n/);
  });

  it('ends with 1 for a file with a fault, with 2 for a call that it does not understand', () => {
    expect(started('check', 'no-such-file.json')).toMatchObject({
      status: 1,
      stdout: '',
      stderr: 'no-such-file.json: There is no such file. Check the name.\n',
    });
    expect(started('rank').status).toBe(2);
  });

  it('reads the linear solver for a build that needs it, and not for a tower', () => {
    expect(scriptsRead('measure', '--attempt', 'tall-light-eiders-0935').filter(isSolver)).toEqual([]);
    expect(scriptsRead('measure', '--attempt', 'harbour-wall-fulmars-1120').filter(isSolver)).not.toEqual([]);
  });

  it('is quiet when its reader has seen enough', async () => {
    const child = spawn(process.execPath, [MAIN, 'score', '--as', 'json'], { stdio: ['ignore', 'pipe', 'pipe'] });
    let err = '';
    child.stderr.on('data', (data) => {
      err += String(data);
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((done) => {
      child.on('close', done);
    });
    expect([status, err]).toEqual([0, '']);
  });
});
