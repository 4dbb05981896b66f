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

const PAGE = 'apps/web/src/a.tsx';

it.each([
  ['a sentence between tags', '<p>Put it down</p>', '"Put it down"'],
  ['one word between tags', '<button>Undo</button>', '"Undo"'],
  ['a unit beside a number', '<p>{3} cm</p>', '"cm"'],
  ['a word in braces', "<>{'Undo'}</>", '"Undo"'],
  ['a word beside a value', '<p>{`Try ${7}`}</p>', '"Try {}"'],
  ['a word that is read out', '<i aria-label="Undo" />', '"Undo"'],
  ['a word in braces that is read out', "<i title={'Undo'} />", '"Undo"'],
])('in a page %s is told', (_, markup, said) => {
  expect(sentenceFaults(fixture({ [PAGE]: `\nexport const a = ${markup};` }))).toEqual([`${PAGE}:2: ${said}`]);
});

it.each([
  ['words from the catalogue', "<p title={words.say('undo')}>{words.say('undo.what')}</p>"],
  ['signs and numbers', '<p>{3} × {5} – 7 %</p>'],
  ['spaces that hold together', '<p>{3}&nbsp;{5}</p>'],
  ['names that nobody sees', '<p className="page start of" id="content" role="status" data-kept="yes" />'],
])('in a page %s are left alone', (_, markup) => {
  expect(sentenceFaults(fixture({ [PAGE]: `export const a = ${markup};` }))).toEqual([]);
});

it.each([
  ['a code', "export const a = 'no-height-read';"],
  ['a name of two words', "export const a = 'Tall Light';"],
  ['numbers and units', "export const a = '3 mm by 5 mm by 7 mm';"],
  ["a programmer's mistake", "throw new RangeError('no value for this symbol');"],
  ['a comment', '// The tower stands on the table.'],
  ['keys', "export const a = 'C F S A';"],
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
