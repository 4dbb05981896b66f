// A file written whole or not at all: into a new file beside it, which then takes the name.

import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';

export type WriteFault = 'no-folder' | 'is-folder' | 'not-writable' | 'disk-full';

export type WriteOutcome =
  | { readonly ok: true; readonly replaced: boolean }
  | { readonly ok: false; readonly fault: WriteFault };

/** A file of that name is replaced by the whole new one; when that fails it stays as it was. */
export function writeToDisk(path: string, bytes: Uint8Array): WriteOutcome {
  const replaced = existsSync(path);
  if (replaced && statSync(path).isDirectory()) return { ok: false, fault: 'is-folder' };
  // Where the name is a link, the file that it leads to is replaced.
  const target = replaced ? realpathSync(path) : path;
  const beside = `${target}.${process.pid}.part`;
  try {
    writeThrough(beside, bytes);
    renameSync(beside, target);
    return { ok: true, replaced };
  } catch (error) {
    rmSync(beside, { force: true });
    return { ok: false, fault: faultOf(error) };
  }
}

/** With all folders above it; one that is there already is fine. */
export function folderOnDisk(path: string): WriteFault | null {
  try {
    mkdirSync(path, { recursive: true });
    return null;
  } catch (error) {
    return faultOf(error);
  }
}

/** On the disk before it gets its name, so that a power cut leaves the old file or the new one. */
function writeThrough(path: string, bytes: Uint8Array): void {
  const file = openSync(path, 'wx');
  try {
    writeFileSync(file, bytes);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function faultOf(error: unknown): WriteFault {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'no-folder';
  if (code === 'EISDIR') return 'is-folder';
  return code === 'ENOSPC' || code === 'EDQUOT' ? 'disk-full' : 'not-writable';
}
