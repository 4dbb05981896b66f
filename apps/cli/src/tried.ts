// For tests: one call run in this process, with what it wrote to its outputs.

import type { Io, ReadOutcome } from './io.ts';
import { nodeIo } from './io.ts';
import { run } from './run.ts';

interface Tried {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs one call. Files are those of `files` by name, else those of the disk. */
export function tried(args: readonly string[], files: Readonly<Record<string, string | Uint8Array>> = {}): Tried {
  let [out, err] = ['', ''];
  const io: Io = {
    readFile: (path) => inMemory(files[path]) ?? nodeIo.readFile(path),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  };
  return { code: run(args, io), out, err };
}

function inMemory(content: string | Uint8Array | undefined): ReadOutcome | undefined {
  if (content === undefined) return undefined;
  return { ok: true, bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content };
}
