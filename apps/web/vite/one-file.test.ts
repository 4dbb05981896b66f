// Putting the parts of a built page into it changes nothing of what they say.

import { expect, it } from 'vitest';
import { withAllInside } from './one-file.ts';

const PAGE =
  '<link rel="icon" href="./icon.svg" type="image/svg+xml">' +
  '<link rel="manifest" href="./manifest.json">' +
  '<script type="module" crossorigin src="./assets/a.js"></script>' +
  '<link rel="stylesheet" crossorigin href="./assets/a.css">';

const inside = (parts: Readonly<Record<string, string>>): string =>
  withAllInside(PAGE, (file) => parts[file] ?? '', '<svg/>');

it('every address of the page gives way to what stands there, and nothing is asked for', () => {
  const page = inside({ 'assets/a.js': 'go()', 'assets/a.css': 'p{}' });
  expect(page).toBe(
    '<link rel="icon" href="data:image/svg+xml;base64,PHN2Zy8+" type="image/svg+xml">' +
      '<script type="module">go()</script><style>p{}</style>',
  );
});

it.each([
  ['the end of a script', 'a</script>b'],
  ['the end of a script in capitals', '</SCRIPT >'],
  ['a script that begins in a comment', '<!-- <script>'],
  ['what a replacement would take for a group', "$& $1 $$ $' $`"],
])('a text that holds %s says the same inside', (_, text) => {
  const page = inside({
    'assets/a.js': `said(${JSON.stringify(text)}, /${'</script>'.replace('/', '\\/')}|${'<!--'}/u)`,
  });
  const script = page.slice(page.indexOf('<script type="module">') + 22, page.lastIndexOf('</script>'));
  expect(script).not.toMatch(/<\/?script|<!--/i);
  const said: unknown[] = [];
  new Function('said', script)((...all: unknown[]) => said.push(...all));
  expect(said[0]).toBe(text);
  expect(said[1]).toBeInstanceOf(RegExp);
  expect((said[1] as RegExp).test('</script>') && (said[1] as RegExp).test('<!--')).toBe(true);
});

it('a style cannot end its element', () => {
  const page = inside({ 'assets/a.css': 'p::after{content:"</style>"}' });
  expect(page).toContain('content:"<\\/style>"');
});
