// A folder as a web site on this machine, as plain as any web host: files by their names, nothing else.

import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
};

export interface Site {
  /** Ends with a slash. */
  readonly address: string;
  close(): Promise<void>;
}

/** Serves `folder`, and `pages` (path to HTML) beside its files, on a free port of this machine alone. */
export async function serveFolder(folder: string, pages: Readonly<Record<string, string>> = {}): Promise<Site> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    contentOf(folder, path, pages).then(
      (content) => response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'text/plain' }).end(content),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const at = server.address();
  if (at === null || typeof at === 'string') throw new RangeError('the server has no port');
  return {
    address: `http://127.0.0.1:${at.port}/`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

async function contentOf(
  folder: string,
  path: string,
  pages: Readonly<Record<string, string>>,
): Promise<string | Buffer> {
  const file = normalize(join(folder, decodeURIComponent(path)));
  if (!file.startsWith(folder + sep)) throw new RangeError('the path leads out of the folder');
  return pages[path] ?? readFile(file);
}
