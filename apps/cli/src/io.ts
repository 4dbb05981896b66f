// What a command may do to the world: read a file and write one, write to the two outputs. Handed in, so that tests need no process.

import { readFileSync, statSync } from 'node:fs';
import type { LinearSolver } from '@cairnmark/geometry';
import { loadSolver } from './load-solver.ts';
import type { WriteFault, WriteOutcome } from './write-file.ts';
import { folderOnDisk, writeToDisk } from './write-file.ts';

/** Bytes of a file that are read at most. */
export const BYTES_MOST = 20_000_000;

export type ReadFault = 'missing' | 'folder' | 'closed' | 'too-large';

export type ReadOutcome =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly fault: ReadFault };

export interface Io {
  readonly readFile: (path: string) => ReadOutcome;
  /** Whole or not at all; takes the place of a file of that name. */
  readonly writeFile: (path: string, bytes: Uint8Array) => WriteOutcome;
  /** null: it is there. */
  readonly makeFolder: (path: string) => WriteFault | null;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Loads the linear solver, once a build needs one. */
  readonly loadSolver: () => Promise<LinearSolver>;
}

/** The real world. */
export const nodeIo: Io = {
  readFile: readFromDisk,
  writeFile: writeToDisk,
  makeFolder: folderOnDisk,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  loadSolver,
};

function readFromDisk(path: string): ReadOutcome {
  try {
    const found = statSync(path);
    if (found.isDirectory()) return { ok: false, fault: 'folder' };
    if (found.size > BYTES_MOST) return { ok: false, fault: 'too-large' };
    const bytes = readFileSync(path);
    return bytes.length > BYTES_MOST ? { ok: false, fault: 'too-large' } : { ok: true, bytes };
  } catch (error) {
    return { ok: false, fault: isMissing(error) ? 'missing' : 'closed' };
  }
}

function isMissing(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  return code === 'ENOENT' || code === 'ENOTDIR';
}
