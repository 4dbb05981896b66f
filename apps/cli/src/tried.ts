// For tests: one call run in this process, with what it wrote to its outputs.

import type { Io, ReadOutcome } from './io.ts';
import { nodeIo } from './io.ts';
import { run } from './run.ts';

interface Tried {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** How often the linear solver was asked for. */
  readonly solverLoads: number;
}

/** Runs one call. Files are those of `files` by name, else those of the disk. */
export async function tried(
  args: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
): Promise<Tried> {
  let [out, err] = ['', ''];
  let loads = 0;
  const io: Io = {
    readFile: (path) => inMemory(files[path]) ?? nodeIo.readFile(path),
    writeFile: nodeIo.writeFile,
    makeFolder: nodeIo.makeFolder,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    loadSolver: () => {
      loads += 1;
      return nodeIo.loadSolver();
    },
  };
  const code = await run(args, io);
  return { code, out, err, solverLoads: loads };
}

function inMemory(content: string | Uint8Array | undefined): ReadOutcome | undefined {
  if (content === undefined) return undefined;
  return { ok: true, bytes: typeof content === 'string' ? new TextEncoder().encode(content) : content };
}
