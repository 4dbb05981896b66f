import { defineConfig } from 'vite';

// The pages may lie in any folder of any web host, so every address in them is relative.
export default defineConfig({
  base: './',
  resolve: { conditions: ['@cairnmark/source', 'module', 'browser', 'import', 'default'] },
  worker: { format: 'es' },
  build: { target: 'es2022', manifest: true, sourcemap: true, chunkSizeWarningLimit: 4000 },
});
