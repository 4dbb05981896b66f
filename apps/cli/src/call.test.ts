import { describe, expect, it } from 'vitest';
import { readCall } from './call.ts';

const call = (...args: string[]) => readCall(args).call;

describe('a call', () => {
  it('is read with its files and options', () => {
    expect(call('score', 'class.json', '--rows', '--as', 'csv')).toEqual({
      command: 'score',
      rest: ['class.json'],
      form: 'csv',
      rows: true,
      attempt: null,
      without: null,
      taps: null,
      tilt: null,
      challenge: null,
      pieces: null,
      language: 'en',
      print: {},
      fair: {},
    });
    expect(call('measure', '--without', '3', '--tilt', 'left')).toMatchObject({ without: '3', tilt: 'left' });
    expect(call('why', 'Puffins', '--challenge', 'tall')).toMatchObject({ rest: ['Puffins'], challenge: 'tall' });
    expect(call('ready', 'tallest', '--pieces', '7')).toMatchObject({ rest: ['tallest'], pieces: '7' });
    expect(call('print', '-o', 'a.pdf', '--masters')).toMatchObject({ print: { out: 'a.pdf', masters: true } });
    expect(call('measure', '--attempt=terns-1', 'a.json', 'b.json')).toMatchObject({
      command: 'measure',
      rest: ['a.json', 'b.json'],
      attempt: 'terns-1',
    });
  });

  it('without a command, or with --help, asks for help', () => {
    expect(call()).toMatchObject({ command: 'help', rest: [] });
    expect(call('score', '--help')).toMatchObject({ command: 'help', rest: ['score'] });
    expect(call('-h')).toMatchObject({ command: 'help' });
  });

  it('takes a file whose name begins with a hyphen after --', () => {
    expect(call('check', '--', '-odd.json')).toMatchObject({ rest: ['-odd.json'] });
  });
});

describe('a call that is not understood', () => {
  it('says what was wrong and what would be right', () => {
    expect(call('rank')).toBe(
      'There is no command "rank". Use one of: score, measure, why, ready, favour, even, best, print, trace, solids, check, help.',
    );
    expect(call('check', '--rows')).toBe('There is no option "--rows" here. See: cairnmark help check');
    expect(call('score', '--colour', 'red')).toBe('There is no option "--colour" here. See: cairnmark help score');
    expect(call('score', '--as')).toBe('The option "--as" needs a value after it. See: cairnmark help score');
    expect(call('--lang')).toBe('The option "--lang" needs a value after it. See: cairnmark help');
    expect(call('score', '--as', '--rows')).toBe('The option "--as" needs a value after it. See: cairnmark help score');
    expect(call('score', '--as', 'pdf')).toBe('The option "--as" cannot be "pdf". Use one of: table, json, csv.');
    expect(call('score', '--rows=no')).toBe('The option "--rows" takes no value. See: cairnmark help score');
  });

  it('says so in the language asked for', () => {
    expect(call('rank', '--lang', 'es')).toBe(
      'No hay ninguna orden "rank". Usa una de estas: score, measure, why, ready, favour, even, best, print, trace, solids, check, help.',
    );
    expect(call('score', '--lang', 'fr')).toBe('The option "--lang" cannot be "fr". Use one of: en, es.');
  });
});
