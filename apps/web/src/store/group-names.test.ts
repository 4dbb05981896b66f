import { GROUPS_MOST } from '@cairnmark/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isAmong, readNames } from './group-names.ts';
import { plainText } from './plain-text.ts';

describe('names of groups', () => {
  it('are read line by line, and from a row of a spreadsheet', () => {
    expect(readNames('Puffins\r\nTerns\n\nGannets', []).names).toEqual(['Puffins', 'Terns', 'Gannets']);
    expect(readNames('Puffins\tTerns; Gannets, Eiders', []).names).toEqual(['Puffins', 'Terns', 'Gannets', 'Eiders']);
  });

  it('leave out a column of numbers beside them', () => {
    expect(readNames('Puffins\t5\n2\tTerns\nGannets\t', []).names).toEqual(['Puffins', 'Terns', 'Gannets']);
    expect(readNames('4\t7', []).names).toEqual(['4', '7']);
  });

  it('lose the numbers of a numbered list, but not one of their own', () => {
    expect(readNames('1. Puffins\n2) Terns\nTable 3\n4', []).names).toEqual(['Puffins', 'Terns', 'Table 3', '4']);
  });

  it('that stand there twice are taken once, and told', () => {
    expect(readNames('Terns, Puffins, terns', ['PUFFINS'])).toEqual({
      names: ['Terns'],
      twice: ['Puffins', 'terns'],
      tooLong: [],
      tooMany: [],
    });
  });

  it('too long for a class file are left out, and told', () => {
    const long = 'Auks'.repeat(21);
    expect(readNames(`Terns, ${long}`, [])).toEqual({
      names: ['Terns'],
      twice: [],
      tooLong: [long],
      tooMany: [],
    });
  });

  it('beyond the most groups of a class are left out, and told', () => {
    const taken = Array.from({ length: GROUPS_MOST - 1 }, (_, k) => `Crew ${k}`);
    expect(readNames('Terns, Puffins', taken)).toMatchObject({ names: ['Terns'], tooMany: ['Puffins'] });
  });

  it('differ in more than capitals', () => {
    expect([isAmong('TERNS', ['Puffins', 'Terns']), isAmong('Auks', ['Puffins'])]).toEqual([true, false]);
  });

  it('a name that begins with a number keeps it where no list was typed', () => {
    expect(plainText(' 3.  Klasse B ')).toBe('3. Klasse B');
  });

  it('whatever is pasted, they are names that a class file takes, each once', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const { names } = readNames(text, []);
        for (const name of names) {
          expect(name).toMatch(/^[^\p{Cc}]{1,80}$/u);
          expect(name).toBe(plainText(name).length > 0 ? name : '');
        }
        expect(new Set(names).size).toBe(names.length);
      }),
    );
  });
});
