// Writes a picture of every state of every screen into .cache/screenshots, at three sizes, in the light and in the dark.
//
//   npm run screenshots                all of them
//   npm run screenshots -- -t board    those whose name holds "board"

import { defineConfig } from 'vitest/config';
import { onSources } from '../../tools/test-run.ts';
import { browserRun } from '../vitest.config.ts';

export default defineConfig({ ...onSources, test: { ...browserRun, include: ['tests/e2e/pictures/*.pictures.ts'] } });
