import { spawn } from 'node:child_process';
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { expect, it } from 'vitest';
import { ROOT } from './files.ts';
import { fixture } from './fixture.ts';
import type { Wish } from './ready.mjs';
import { nodeTooOld } from './ready.mjs';

/** A clone whose npm and whose compiler only write down that they were called. */
function clone(
  npm = 'sleep 0.3; mkdir -p node_modules/typescript/bin; cp tsc.cjs node_modules/typescript/bin/tsc',
): string {
  const root = fixture({
    'package.json': JSON.stringify({ engines: { node: '>=20.19' } }),
    'package-lock.json': '{ "locked": 3 }',
    'bin/npm': `#!/bin/sh\necho "npm $1" >> calls\n${npm}\n`,
    'tsc.cjs': "require('fs').appendFileSync('calls', 'tsc\\n');",
    calls: '',
  });
  chmodSync(join(root, 'bin/npm'), 0o755);
  return root;
}

/** Makes the clone ready in a process of its own; answers with its exit code and what it said. */
function ready(root: string, wanted: Wish, more: object = {}): Promise<{ code: number | null; said: string }> {
  const script = `import { ready } from '${join(ROOT, 'tests/tools/ready.mjs')}'; ready('${root}', '${wanted}');`;
  const env = { ...process.env, PATH: [join(root, 'bin'), process.env['PATH']].join(delimiter), ...more };
  const child = spawn(process.execPath, ['--input-type=module', '-e', script], { cwd: root, env });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, said })));
}

const callsOf = (root: string): string[] => readFileSync(join(root, 'calls'), 'utf8').trim().split('\n');

it('installs once, and again when the lockfile has changed; compiles every time', async () => {
  const root = clone();
  await ready(root, 'build');
  await ready(root, 'build');
  writeFileSync(join(root, 'package-lock.json'), '{ "locked": 5 }');
  await ready(root, 'install');
  await ready(root, 'build');
  expect(callsOf(root)).toEqual(['npm ci', 'tsc', 'tsc', 'npm ci', 'tsc']);
});

it('of several at once one installs and the others wait', async () => {
  const root = clone();
  const runs = await Promise.all([ready(root, 'build'), ready(root, 'build'), ready(root, 'build')]);
  expect(runs.map((run) => run.code)).toEqual([0, 0, 0]);
  expect(callsOf(root)).toEqual(['npm ci', 'tsc', 'tsc', 'tsc']);
});

it('takes over from a run that was killed', async () => {
  const root = clone();
  const gone = spawn(process.execPath, ['-e', '0']);
  await new Promise((resolve) => gone.on('exit', resolve));
  mkdirSync(join(root, '.cache'));
  writeFileSync(join(root, '.cache/ready.lock'), String(gone.pid));
  expect((await ready(root, 'build')).code).toBe(0);
});

it('a failed installation is told and tried again next time', async () => {
  const root = clone('exit 1');
  const first = await ready(root, 'build');
  expect(first.code).toBe(1);
  expect(first.said).toContain('npm ci failed');
  await ready(root, 'build');
  expect(callsOf(root)).toEqual(['npm ci', 'npm ci']);
});

it.each([
  ['20.19.0', true],
  ['20.20.2', true],
  ['22.1.0', true],
  ['20.18.9', false],
  ['18.20.4', false],
])('Node %s is new enough: %s', (version, enough) => {
  expect(nodeTooOld({ engines: { node: '>=20.19' } }, version) === undefined).toBe(enough);
});

it.each([
  ['exit 0', 0, ''],
  ['exit 1', 1, 'no browser starts from there'],
])('a browser that answers "%s" is taken or told', async (answer, code, said) => {
  const root = clone();
  writeFileSync(join(root, 'chrome'), `#!/bin/sh\n${answer}\n`);
  chmodSync(join(root, 'chrome'), 0o755);
  const run = await ready(root, 'browser', { CHROME_PATH: join(root, 'chrome') });
  expect(run).toEqual({ code, said: expect.stringContaining(said) });
});
