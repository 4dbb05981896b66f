import { expect, it } from 'vitest';
import { nameFaults } from './check-names.ts';
import { fixture } from './fixture.ts';

it.each([
  ['Math.random', 'export const a = () => 1 + Math.random();'],
  ['Math.random', "export const a = Math['random'];"],
  ['Date', 'export const a = () => new Date();'],
  ['Date', 'export const a = Date.now();'],
  ['console', "console.log('x');"],
])('%s in a package is told: %s', (name, text) => {
  expect(nameFaults(fixture({ 'packages/engine/src/a.ts': `\n${text}` }))).toEqual([
    `packages/engine/src/a.ts:2: a package may not use ${name}`,
  ]);
});

it.each([
  ['console', 'console.error(error)'],
  ['Math.random', 'Math.random()'],
])('%s in a page is told', (name, text) => {
  const root = fixture({ 'apps/web/src/a.tsx': `export const a = <i>{\n${text}}</i>;` });
  expect(nameFaults(root)).toEqual([`apps/web/src/a.tsx:2: a page may not use ${name}`]);
});

it('tests, apps, comments and texts are left alone', () => {
  const root = fixture({
    'packages/engine/src/a.ts':
      "// no Math.random, no Date\nexport const a = 'Date'; export const b = Math.round(3.7);",
    'packages/engine/src/a.test.ts': 'Math.random();',
    'apps/cli/src/a.ts': 'console.log(new Date());',
    'apps/web/src/a.ts': 'export const a = () => new Date();',
  });
  expect(nameFaults(root)).toEqual([]);
});
