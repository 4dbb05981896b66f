// Builds the app and serves it with the demo class at hand; prints the address, and nothing else, on standard output.
//
//   node apps/web/serve.mjs [PORT]

import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));
const port = Number(process.argv[2] ?? 4173);

process.env['NODE_ENV'] = 'production';
await build({ root, logLevel: 'error' });
const server = await preview({ root, logLevel: 'error', preview: { port, strictPort: false } });
const [address = ''] = server.resolvedUrls?.local ?? [];
process.stdout.write(`Cairnmark  ${address}\n`);
