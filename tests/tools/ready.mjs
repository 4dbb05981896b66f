// Gets a clone ready to run: installs when package-lock.json has changed since the last time, then compiles what has
// changed. Needs Node alone, for it runs before anything is installed. It speaks on the error stream only.
//
//   node tests/tools/ready.mjs          install
//   node tests/tools/ready.mjs build    install, then compile into the dist folders

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const WAIT_MS = 50;
/** Longer than any installation: a lock that is older was left behind. */
const PATIENCE_MS = 600_000;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    ready(ROOT, process.argv[2] === 'build');
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    process.exitCode = 1;
  }
}

/**
 * Installs what is lacking in the clone at `root`, and compiles when asked to. Of several that run at once one works and
 * the others wait. Throws an Error whose message is a sentence for the person at the terminal.
 * @param {string} root
 * @param {boolean} compile
 */
export function ready(root, compile) {
  const lacking = nodeTooOld(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')), process.versions.node);
  if (lacking !== undefined) throw new Error(lacking);
  withLock(join(root, '.cache'), () => {
    if (!isInstalled(root)) install(root);
    if (compile) build(root);
  });
}

/**
 * A sentence when `version` is below the one that package.json asks for (engines.node, written ">=20.19").
 * @param {{ engines: { node: string } }} manifest
 * @param {string} version
 * @returns {string | undefined}
 */
export function nodeTooOld(manifest, version) {
  const wanted = manifest.engines.node.replace('>=', '');
  const [major = 0, minor = 0] = wanted.split('.').map(Number);
  const [hasMajor = 0, hasMinor = 0] = version.split('.').map(Number);
  if (hasMajor > major || (hasMajor === major && hasMinor >= minor)) return undefined;
  return `Cairnmark needs Node ${wanted} or newer; this is Node ${version}.`;
}

/**
 * Whether node_modules holds what package-lock.json now asks for.
 * @param {string} root
 */
function isInstalled(root) {
  const stamp = stampFile(root);
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === lockfileHash(root);
}

/** @param {string} root */
function markInstalled(root) {
  writeFileSync(stampFile(root), lockfileHash(root));
}

/** @param {string} root */
function install(root) {
  process.stderr.write('Installing the packages in package-lock.json (about a minute, once) ...\n');
  const { status } = spawnSync('npm', ['ci'], { ...quietOutput(root), shell: process.platform === 'win32' });
  if (status !== 0) throw new Error('npm ci failed, so nothing was started. Its message stands above.');
  markInstalled(root);
}

/** @param {string} root */
function build(root) {
  const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const { status } = spawnSync(process.execPath, [compiler, '-b'], quietOutput(root));
  if (status !== 0) throw new Error('The sources do not compile, so nothing was started. The faults stand above.');
}

/**
 * Everything a child prints goes to the error stream: standard output belongs to the program that runs next.
 * @param {string} root
 * @returns {{ cwd: string, stdio: ['ignore', 2, 2] }}
 */
function quietOutput(root) {
  return { cwd: root, stdio: ['ignore', 2, 2] };
}

/** @param {string} root */
function stampFile(root) {
  return join(root, 'node_modules', '.cairnmark-ready');
}

/** @param {string} root */
function lockfileHash(root) {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
}

/**
 * Runs `work` while no other process does, waiting for its turn.
 * @param {string} folder
 * @param {() => void} work
 */
function withLock(folder, work) {
  const lock = join(folder, 'ready.lock');
  mkdirSync(folder, { recursive: true });
  for (let waitedMs = 0; !takeLock(lock); waitedMs += WAIT_MS) {
    if (waitedMs > PATIENCE_MS) throw new Error(`Another run seems to hang. If none is running, delete ${lock}.`);
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MS);
  }
  try {
    work();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** @param {string} lock */
function takeLock(lock) {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (codeOf(error) !== 'EEXIST') throw error;
  }
  if (wasLeftBehind(lock)) rmSync(lock, { force: true });
  return false;
}

/**
 * Whether the process that wrote the lock is gone: signal 0 asks only whether it is there.
 * @param {string} lock
 */
function wasLeftBehind(lock) {
  try {
    process.kill(Number(readFileSync(lock, 'utf8')), 0);
    return false;
  } catch (error) {
    return codeOf(error) === 'ESRCH';
  }
}

/** @param {unknown} error */
function codeOf(error) {
  return error instanceof Error && 'code' in error ? error.code : undefined;
}
