// Sources of the repository as plain modules, so that a script can run them as an app would.

import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

const CACHE = fileURLToPath(new URL('../../.cache', import.meta.url));

/**
 * Bundles the files `name`.ts of the folder `from` together, into a folder called `as`, and gives the function that loads
 * one of them.
 * @param {string} as
 * @param {readonly string[]} names
 * @param {string} from
 * @returns {Promise<(name: string) => Promise<any>>}
 */
export async function bundle(as, names, from) {
  const outDir = join(CACHE, as);
  rmSync(outDir, { recursive: true, force: true });
  mkdirSync(outDir, { recursive: true });
  await build({
    configFile: false,
    logLevel: 'warn',
    resolve: { conditions: ['@cairnmark/source'] },
    ssr: { resolve: { conditions: ['@cairnmark/source'] } },
    build: {
      ssr: true,
      minify: false,
      outDir,
      rolldownOptions: {
        input: Object.fromEntries(names.map((name) => [name, join(from, `${name}.ts`)])),
        output: { entryFileNames: '[name].js' },
      },
    },
  });
  return (name) => import(pathToFileURL(join(outDir, `${name}.js`)).href);
}
