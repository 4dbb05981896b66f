import { describe, expect, it } from 'vitest';
import { csvText } from './csv.ts';

const line = (...cells: (string | number | null)[]): string => csvText([cells]).replace('\ufeff', '');

describe('comma separated values', () => {
  it('quote what would part a cell', () => {
    expect(line('a', 'b, c', 'say "ho"', 'two\nlines')).toBe('a,"b, c","say ""ho""","two\nlines"\r\n');
  });

  it('leave a cell empty for what there is not, and write 0 for 0', () => {
    expect(line('Eiders', null, 0, -0)).toBe('Eiders,,0,0\r\n');
  });

  it('have a decimal point and no noise of doubles', () => {
    expect(line(0.1 + 0.2, 253.4, -1.5, 1 / 3)).toBe('0.3,253.4,-1.5,0.333\r\n');
  });

  it('disarm what a spreadsheet would take for a formula, and leave numbers alone', () => {
    const armed = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '＝1', '\r=1'];
    for (const text of armed) expect(line(text).replace(/^"/, '')).toMatch(/^'/);
    expect(line('Terns = 2', 'a-b', -1)).toBe('Terns = 2,a-b,-1\r\n');
  });

  it('begin with the mark of the byte order', () => {
    expect(csvText([['x']]).codePointAt(0)).toBe(0xfeff);
  });
});
