import { expect, it } from 'vitest';
import { sentenceFaults } from './check-sentences.ts';
import { fixture } from './fixture.ts';

const SOURCE = 'packages/engine/src/a.ts';

it.each([
  ['a string', "export const a = 'The tower stands.';", '"The tower stands."'],
  ['an error that is no RangeError', "throw new Error('the file is broken');", '"the file is broken"'],
  ['a template', 'export const a = (n: number) => `Place ${n} of the board`;', '"Place {} of the board"'],
  ['a text with an apostrophe', 'export const a = "It doesn\'t stand";', `"It doesn't stand"`],
  ['another language', "export const a = '¿Está en pie?';", '"¿Está en pie?"'],
])('%s is told with its place', (_, text, said) => {
  expect(sentenceFaults(fixture({ [SOURCE]: `\n\n${text}` }))).toEqual([`${SOURCE}:3: ${said}`]);
});

it('a text between tags in an app is told', () => {
  expect(sentenceFaults(fixture({ 'apps/web/src/a.tsx': 'export const a = <p>Put it down</p>;' }))).toHaveLength(1);
});

it.each([
  ['a code', "export const a = 'no-height-read';"],
  ['a name of two words', "export const a = 'Tall Light';"],
  ['numbers and units', "export const a = '3 mm by 5 mm by 7 mm';"],
  ["a programmer's mistake", "throw new RangeError('no value for this symbol');"],
  ['a comment', '// The tower stands on the table.'],
  ['an import', "import './a.ts';"],
])('%s is left alone', (_, text) => {
  expect(sentenceFaults(fixture({ [SOURCE]: text }))).toEqual([]);
});

it('words may speak, the demo has names, tests have titles', () => {
  const text = "export const a = 'The tower stands.';";
  const root = fixture({
    'packages/words/src/en.ts': text,
    'packages/demo/src/class.ts': text,
    'packages/engine/src/a.test.ts': text,
  });
  expect(sentenceFaults(root)).toEqual([]);
});
