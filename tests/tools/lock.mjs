// One process at a time: a lock file that names the process which holds it.

import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const WAIT_MS = 50;
/** Longer than any installation: a lock that is older was left behind. */
const PATIENCE_MS = 600_000;

/**
 * Runs `work` while no other process does, waiting for its turn.
 * @param {string} folder
 * @param {() => void} work
 */
export function withLock(folder, work) {
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
