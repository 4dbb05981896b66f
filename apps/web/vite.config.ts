import { defineConfig } from 'vite';
import { offline } from './vite/offline.ts';
import { oneFile } from './vite/one-file.ts';

// The pages may lie in any folder of any web host, so every address in them is relative.
// With `--mode one-file` all of it becomes one page (see vite/one-file.ts).
export default defineConfig(({ mode }) => ({
  base: './',
  resolve: { conditions: ['@cairnmark/source', 'module', 'browser', 'import', 'default'] },
  worker: { format: 'es' },
  build: { target: 'es2022', manifest: true, sourcemap: true, chunkSizeWarningLimit: 4000 },
  plugins: [mode === 'one-file' ? oneFile('icon.svg') : offline('src/offline/service-worker.ts')],
}));
