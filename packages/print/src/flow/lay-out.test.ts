import { describe, expect, it } from 'vitest';
import type { Mark } from '../page/page.ts';
import type { Block } from './blocks.ts';
import type { Layout } from './lay-out.ts';
import { layOut } from './lay-out.ts';

const LAYOUT: Layout = { paper: { size: 'a4', orientation: 'portrait' }, print: 'usual', mostPages: 9 };

const issuesOf = (blocks: readonly Block[], layout = LAYOUT) => {
  const sheet = layOut('Sheet', blocks, layout);
  return sheet.ok ? [] : sheet.issues.map(({ details, ...issue }) => ({ ...issue, details: rounded(details) }));
};

/** Lengths to a millionth of a mm: sums of widths are off by less. */
const rounded = (details: Readonly<Record<string, string | number>>) =>
  Object.fromEntries(
    Object.entries(details).map(([key, value]) => [key, typeof value === 'number' ? Number(value.toFixed(6)) : value]),
  );

/** What is written on each page, from the top. */
function textsOf(blocks: readonly Block[], layout = LAYOUT): readonly (readonly string[])[] {
  const sheet = layOut('Sheet', blocks, layout);
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.issues));
  const written = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'writing' ? [mark] : []));
  return sheet.value.pages.map((marks) =>
    written(marks)
      .sort((a, b) => b.at[1] - a.at[1] || a.at[0] - b.at[0])
      .map(({ text }) => text),
  );
}

const text = (words: string): Block => ({ kind: 'paragraph', text: words });
const gap = (heightMm: number): Block => ({ kind: 'gap', heightMm });

describe('what does not fit', () => {
  it('is told all at once, each with its place and its lengths', () => {
    const blocks: readonly Block[] = [
      text('Zählt → nicht'),
      {
        kind: 'table',
        rules: 'grid',
        columns: [{ widthMm: 20 }, { widthMm: 19 }],
        head: ['Edge', 'Circumference'],
        rows: [
          { cells: ['Cube', ''] },
          { cells: ['One two three four five six seven', [{ kind: 'lines', count: 3 }]], mostMm: 11 },
        ],
      },
      { kind: 'columns', columns: [{ share: 1, blocks: [gap(300)] }] },
      { kind: 'drawing', widthMm: 195, heightMm: 30, marks: [] },
    ];
    expect(issuesOf(blocks)).toEqual([
      { code: 'character-unprintable', path: ['blocks', 0], details: { character: '→', text: 'Zählt → nicht' } },
      {
        // Four lines of 4.875 mm, and 1.2 mm above and below.
        code: 'text-too-high',
        path: ['blocks', 1, 'rows', 1, 'cells', 0],
        details: { text: 'One two three four five six seven', neededMm: 21.9, roomMm: 11 },
      },
      // Three lines to write on, and 1.2 mm above and below.
      { code: 'part-too-high', path: ['blocks', 1, 'rows', 1, 'cells', 1], details: { neededMm: 29.4, roomMm: 11 } },
      {
        // Helvetica-Bold.afm: 7002 for the word, in the smallest letters of 2.5 mm.
        code: 'text-too-wide',
        path: ['blocks', 1, 'head', 1],
        details: { text: 'Circumference', neededMm: 17.505, roomMm: 16 },
      },
      { code: 'part-too-wide', path: ['blocks', 3], details: { neededMm: 195, roomMm: 194 } },
      { code: 'part-too-high', path: ['blocks', 2], details: { neededMm: 300, roomMm: 267 } },
    ]);
  });

  it('may be too many pages', () => {
    const blocks = [gap(200), gap(200), gap(200)];
    expect(issuesOf(blocks, { ...LAYOUT, mostPages: 3 })).toEqual([]);
    expect(issuesOf(blocks, { ...LAYOUT, mostPages: 2 })).toEqual([
      { code: 'pages-too-many', path: [], details: { count: 3, most: 2 } },
    ]);
  });
});

describe('pages', () => {
  const rows = Array.from({ length: 7 }, (_, k) => ({ cells: [`Row ${k + 1}`, ''], leastMm: 60 }));
  const table: Block = {
    kind: 'table',
    rules: 'grid',
    columns: [{ share: 1 }, { share: 2 }],
    head: ['Solid', 'Edge'],
    rows,
  };

  it('begin with the head of a table that goes on', () => {
    expect(textsOf([table])).toEqual([
      ['Solid', 'Edge', 'Row 1', 'Row 2', 'Row 3', 'Row 4'],
      ['Solid', 'Edge', 'Row 5', 'Row 6', 'Row 7'],
    ]);
  });

  it('never end with a heading, nor with the head of a table', () => {
    const heading: Block = { kind: 'heading', size: 'heading', text: 'Solids' };
    expect(textsOf([gap(215), heading, table])).toEqual([
      [],
      ['Solids', 'Solid', 'Edge', 'Row 1', 'Row 2', 'Row 3', 'Row 4'],
      ['Solid', 'Edge', 'Row 5', 'Row 6', 'Row 7'],
    ]);
  });

  it('never end or begin with a single line of a text', () => {
    const five = text(['one', 'two', 'three', 'four', 'five'].join('\n'));
    // A line is 4.9 mm high, with 2.3 mm above the first.
    expect(textsOf([gap(259), five])).toEqual([[], ['one', 'two', 'three', 'four', 'five']]);
    expect(textsOf([gap(244), five])).toEqual([
      ['one', 'two', 'three'],
      ['four', 'five'],
    ]);
  });

  it('are turned where a sheet says so', () => {
    expect(textsOf([text('one'), { kind: 'new-page' }, text('two')])).toEqual([['one'], ['two']]);
  });

  it('of large print are more', () => {
    const long = Array.from({ length: 50 }, (_, k) => text(`Line ${k + 1}`));
    const pages = (['usual', 'large'] as const).map((print) => textsOf(long, { ...LAYOUT, print }));
    expect(pages.map((one) => one.length)).toEqual([2, 3]);
    expect(pages[1]!.flat()).toEqual(pages[0]!.flat());
  });
});

describe('mistakes of a program are thrown', () => {
  it('a row with too few cells, and columns wider than the page', () => {
    const table = { kind: 'table', rules: 'none', rows: [{ cells: ['a'] }] } as const;
    expect(() => issuesOf([{ ...table, columns: [{ share: 1 }, { share: 1 }] }])).toThrow('1 cells in 2 columns');
    expect(() => issuesOf([{ ...table, columns: [{ widthMm: 195 }] }])).toThrow('columns of 195 mm in 194 mm');
    expect(() => issuesOf([{ ...table, columns: [{ widthMm: 194 }, { share: 1 }] }])).toThrow(RangeError);
  });
});
