import { defineConfig } from 'vite';
import { offline } from './vite/offline.ts';
import { oneFile } from './vite/one-file.ts';

// Scripts that several screens share. Left alone they come in small ones, which pack worse, or lie in one that every screen
// loads; tests/e2e/sizes.e2e.ts holds what each screen may load.

/** Solids as drawings, and how one is put down to be drawn. */
const DRAWING =
  /web\/src\/(drawing\/|parts\/solid-picture)|geometry\/src\/(stack\/(plan|face|portal|finer|drop|landing|place|build)|outline\/(area|overlap)|kernel\/polygon)/;

/** What a group has earned: of use to the worker and to Supply alone. */
const EARNED =
  /scoring\/src\/(supply\/supplies|ranking\/places|rounding\/sum)|engine\/src\/(facts\/fact\.|supply\/supply-facts)/;

/** What every screen of an open class shows numbers with and asks for them with. */
const FIELDS =
  /web\/src\/(parts\/(field|no-class|length-|number-|use-typed|verdict-sign|written-units)|store\/observed-changes|app\/use-build-words)/;

/** Drawing in space. Build has it, and whoever saves a 3D model: in one piece, which packs better than what both happen to use. */
const SPACE =
  /node_modules\/three\/(build|examples\/jsm\/(lines|utils))\/|web\/src\/scene\/surface|geometry\/src\/mesh\/mesh/;

const SHARED = {
  includeDependenciesRecursively: false,
  groups: [
    { name: 'space', test: SPACE },
    { name: 'drawing', test: DRAWING },
    { name: 'earned', test: EARNED },
    { name: 'fields', test: FIELDS },
  ],
};

// The pages may lie in any folder of any web host, so every address in them is relative.
// With `--mode one-file` all of it becomes one page (see vite/one-file.ts).
export default defineConfig(({ mode }) => ({
  base: './',
  resolve: { conditions: ['@cairnmark/source', 'module', 'browser', 'import', 'default'] },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    manifest: true,
    sourcemap: true,
    chunkSizeWarningLimit: 4000,
    ...(mode === 'one-file' ? {} : { rolldownOptions: { output: { codeSplitting: SHARED } } }),
  },
  plugins: [mode === 'one-file' ? oneFile('icon.svg') : offline('src/offline/service-worker.ts')],
}));
