import { expect, it } from 'vitest';
import { placeFaults } from './check-places.ts';
import { fixture } from './fixture.ts';

const ISSUE = ['see issue', '12'].join(' ');

it.each([
  ['a home', ['', 'home', 'ann', 'x'].join('/')],
  ['a home on a Mac', ['', 'Users', 'ann'].join('/')],
  ['a work folder', ['', 'work', 'main'].join('/')],
  ['a drive', ['C:', 'Ann'].join('\\')],
  ['a drive in a string', ['C:', 'Ann'].join('\\\\')],
  ['a registry', ['https://registry', 'example', 'org'].join('.')],
  ['a resolved address', ['"resolved"', '"https://x"'].join(': ')],
  ['an issue', ISSUE],
])('%s is told with its place', (_, text) => {
  const faults = placeFaults(fixture({ 'docs/a.md': `first\nsee ${text}\n` }));
  expect(faults).toHaveLength(1);
  expect(faults[0]).toMatch(/^docs\/a\.md:2: /);
});

it('plain text, and what was installed or built, are left alone', () => {
  const root = fixture({
    'a.md': 'homework/paper, apps/web, the issues of a file, C: drive',
    'node_modules/x/a.md': ISSUE,
    'packages/x/dist/a.md': ISSUE,
  });
  expect(placeFaults(root)).toEqual([]);
});
