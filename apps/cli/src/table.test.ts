import { describe, expect, it } from 'vitest';
import { tableText, widthOf } from './table.ts';

describe('a table', () => {
  it('lines up its columns, numbers at the right, nothing after the last', () => {
    const rows = [
      ['Place', 'Group', 'Height', 'Notes'],
      ['1st', 'Puffins', '43.0 cm', ''],
      ['10th', 'Terns', '7.5 cm', 'shared'],
    ];
    expect(tableText(rows, [0, 2])).toBe(
      ['Place  Group     Height  Notes', '  1st  Puffins  43.0 cm', ' 10th  Terns     7.5 cm  shared', ''].join('\n'),
    );
  });

  it('counts the places that signs take', () => {
    expect(widthOf('Ñandú')).toBe(5);
    expect(widthOf('n\u0303a')).toBe(2);
    expect(widthOf('海鳥')).toBe(4);
    expect(widthOf('🐧!')).toBe(3);
    expect(
      tableText(
        [
          ['海鳥', 'x'],
          ['Terns', 'y'],
        ],
        [],
      ),
    ).toBe('海鳥   x\nTerns  y\n');
  });
});
