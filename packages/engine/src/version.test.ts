import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { ENGINE_VERSION } from './version.ts';

it('the version in reports is that of the package', () => {
  const manifest = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  expect(ENGINE_VERSION).toBe(manifest.version);
});
