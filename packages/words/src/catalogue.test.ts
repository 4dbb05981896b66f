import { describe, expect, it } from 'vitest';
import { commands as enCommands } from './en/commands.ts';
import { english } from './en/index.ts';
import { commands as esCommands } from './es/commands.ts';
import { spanish } from './es/index.ts';
import { fill, slotsOf } from './say.ts';

/** Every text of a language by its place in the catalogue, such as "issues.not-json" or "names.counted.pieces.0". */
function texts(value: unknown, place: string): readonly (readonly [place: string, text: string])[] {
  if (typeof value === 'string') return [[place, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => texts(inner, place === '' ? key : `${place}.${key}`));
}

const EN = new Map(texts({ ...english, commands: enCommands }, ''));
const ES = new Map(texts({ ...spanish, commands: esCommands }, ''));

/** Figures and signs alone, and words that both languages share. */
const SAME = new Set(['commands.score.total', 'commands.column.total', 'why.total']);
const hasWords = (text: string): boolean => /\p{L}{2}/u.test(text.replace(/\{\w+\}/g, ''));

describe('the catalogues', () => {
  it('have the same texts in both languages', () => {
    expect([...ES.keys()].sort()).toEqual([...EN.keys()].sort());
    expect(EN.size).toBeGreaterThan(200);
  });

  it('name the same things between braces', () => {
    for (const [place, text] of EN) {
      expect([place, ...new Set(slotsOf(ES.get(place) ?? ''))].sort()).toEqual(
        [place, ...new Set(slotsOf(text))].sort(),
      );
    }
  });

  it('say something in Spanish that is not the English text', () => {
    const untranslated = [...EN].filter(([place, text]) => hasWords(text) && ES.get(place) === text);
    expect(untranslated.map(([place]) => place).filter((place) => !SAME.has(place))).toEqual([]);
  });

  it('leave no brace once their names are told', () => {
    for (const text of [...EN.values(), ...ES.values()]) {
      const values = Object.fromEntries(slotsOf(text).map((name) => [name, '7']));
      expect(fill(text, values)).not.toMatch(/[{}]|\?\?/);
    }
  });

  it('end every sentence, and leave no blank at its ends or doubled', () => {
    for (const [place, text] of [...EN, ...ES]) {
      if (place.startsWith('issues.') || place.startsWith('cautions.'))
        expect([place, text.at(-1)]).toEqual([place, expect.stringMatching(/[.?]/)]);
      if (!place.startsWith('commands.help') && place !== 'and' && place !== 'per')
        expect([place, text.trim()]).toEqual([place, text]);
      if (!place.startsWith('commands.help')) expect([place, text]).not.toEqual([place, expect.stringContaining('  ')]);
    }
  });

  it('never blame: no "error" and no "invalid" in what is told of a fault', () => {
    const blaming = /\b(error|invalid|illegal|inválid\w+|ilegal)\b/i;
    for (const [place, text] of [...EN, ...ES]) {
      if (/^(issues|commands\.(usage|file))/.test(place)) expect([place, blaming.test(text)]).toEqual([place, false]);
    }
  });
});

describe('places', () => {
  it('are counted in English and in Spanish', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 23, 101, 111].map(english.ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '23rd',
      '101st',
      '111th',
    ]);
    expect([1, 3].map(spanish.ordinal)).toEqual(['1.º', '3.º']);
  });
});
