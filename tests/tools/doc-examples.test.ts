import { expect, it } from 'vitest';
import { examplesIn, likeShown, runExample } from './doc-examples.ts';
import { fixture } from './fixture.ts';

const DOC = '# T\n\n```sh\necho 3\n```\n\n```text\n3\n```\n\n```sh\nrm x\n```\n\nThen:\n\n```text\nno example\n```\n';

it('an example is a script with the printed text right behind it', () => {
  expect(examplesIn(DOC)).toEqual([{ script: 'echo 3', printed: '3', line: 3 }]);
});

it('a fence that is never closed is refused', () => {
  expect(() => examplesIn('```sh\necho 3\n')).toThrow('line 1');
});

it('a script runs in its folder, and a failing line stops it', () => {
  const folder = fixture({ 'a.txt': 'seven\n' });
  expect(runExample('cat a.txt', folder)).toBe('seven\n');
  expect(() => runExample('false\ncat a.txt', folder)).toThrow('ended with 1');
});

it.each([
  ['the same text', 'one\ntwo\n', 'one\ntwo', true],
  ['spaces at the end of a line', 'one  \ntwo\n', 'one\ntwo', true],
  ['lines left out', 'one\ntwo\nthree\nfour\n', 'one\n...\nfour', true],
  ['no line left out', 'one\nfour\n', 'one\n...\nfour', true],
  ['another number', 'one 3.5\n', 'one 375', false],
  ['a line too many', 'one\ntwo\n', 'one', false],
  ['a line too few', 'one\n', 'one\ntwo', false],
  ['the wrong line behind the gap', 'one\ntwo\nthree\n', 'one\n...\nfour', false],
])('printed and shown compare: %s', (_, printed, shown, same) => {
  expect(likeShown(printed, shown) === shown).toBe(same);
});
