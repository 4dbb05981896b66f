// The built program, started as a person starts it: `npm run build` comes first.

import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

const MAIN = fileURLToPath(new URL('../dist/main.js', import.meta.url));

const started = (...args: string[]) => spawnSync(process.execPath, [MAIN, ...args], { encoding: 'utf8' });

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
