// Measuring tables to fill in: large rows and few columns for young pupils, all that a solid has for older ones.

import type { KindOfPiece } from '@cairnmark/engine';
import type { Block, Cell, Column, Row } from '../flow/blocks.ts';
import type { Print, TextSize } from '../flow/sizes.ts';
import type { PaperSize } from '../page/paper.ts';
import type { SheetContext } from './context.ts';
import { groupAndDate, plainTitleOf } from './head.ts';
import type { MeasureColumn } from './measure-columns.ts';
import { inTables, olderColumns, withUnit, youngColumns } from './measure-columns.ts';
import { pagesOf } from './pages-of.ts';
import type { SheetKind } from './sheet-kind.ts';
import { pictureScale, solidPicture } from './solid-picture.ts';

/** What a table looks like; lengths in mm. */
interface Look {
  readonly rows: Readonly<Record<Print, number>>;
  readonly rowMm: Readonly<Record<PaperSize, number>>;
  readonly pictureMm: number;
  readonly nameMm: Readonly<Record<Print, number>>;
  readonly size: TextSize;
  /** Of the heads; in large print those of many columns have least room. */
  readonly headSize: Readonly<Record<Print, TextSize>>;
  readonly howSize: TextSize;
}

const YOUNG: Look = {
  rows: { usual: 6, large: 5 },
  rowMm: { a4: 29, letter: 29 },
  pictureMm: 24,
  nameMm: { usual: 48, large: 50 },
  size: 'large',
  headSize: { usual: 'large', large: 'body' },
  howSize: 'body',
};
const OLDER: Look = {
  rows: { usual: 14, large: 9 },
  rowMm: { a4: 14.5, letter: 13.6 },
  pictureMm: 11,
  nameMm: { usual: 29, large: 36 },
  size: 'small',
  headSize: { usual: 'small', large: 'small' },
  howSize: 'small',
};

export const measureYoung: SheetKind = {
  id: 'measure-young',
  reader: 'pupils',
  copyFor: 'pair',
  needs: null,
  mostPages: (context) => LONG_NAMES * pagesFor(context, YOUNG).length,
  blocks: (context) => tablesOf('measure-young', context, youngColumns(context), YOUNG),
};

export const measureOlder: SheetKind = {
  id: 'measure-older',
  reader: 'pupils',
  copyFor: 'pair',
  needs: null,
  mostPages: (context) => LONG_NAMES * pagesFor(context, OLDER).length,
  blocks: (context) => tablesOf('measure-older', context, olderColumns(context), OLDER),
};

/** Names over several lines make the rows higher, so that a table may go on on another page. */
const LONG_NAMES = 2;

const pagesFor = ({ challenge, print }: SheetContext, { rows }: Look) => pagesOf(challenge.kit.kinds, rows[print]);

function tablesOf(
  id: 'measure-young' | 'measure-older',
  context: SheetContext,
  columns: readonly MeasureColumn[],
  look: Look,
): readonly Block[] {
  const tables = pagesFor(context, look).flatMap((kinds) =>
    inTables(columns, context).map((part): readonly Block[] => [
      plainTitleOf(id, context),
      groupAndDate(context),
      { kind: 'paragraph', text: howText(context), size: look.howSize },
      tableOf(kinds, part, look, context),
      { kind: 'paragraph', text: countedText(context), size: 'small' },
    ]),
  );
  return tables.flatMap((table, k) => (k === 0 ? table : [{ kind: 'new-page' as const }, ...table]));
}

function howText({ ruler, say, sayPlan }: SheetContext): string {
  return `${say('print.measure-how')} ${say('print.measure-ruler', { ruler: sayPlan(`challenge.ruler-${ruler.id}`) })}`;
}

/** How faces, edges and corners are counted in this class. */
export const countedText = ({ challenge, sayPlan, words }: SheetContext): string =>
  sayPlan('kit.counted', { convention: words.words.names.counting[challenge.counting] });

function tableOf(
  kinds: readonly (KindOfPiece | null)[],
  columns: readonly MeasureColumn[],
  look: Look,
  context: SheetContext,
): Block {
  const { headSize, pictureMm, nameMm, rowMm, size } = look;
  const scale = pictureScale(context.solids.values(), pictureMm);
  const rows = kinds.map((kind): Row => {
    const solid = kind === null ? undefined : context.solids.get(kind.id);
    const picture: Cell = solid === undefined ? '' : [solidPicture(solid, scale, pictureMm)];
    return { cells: [picture, kind?.name ?? '', ...columns.map(() => '')], leastMm: rowMm[context.paper] };
  });
  const widths: readonly Column[] = [
    { widthMm: pictureMm + SIDES_MM },
    { widthMm: nameMm[context.print] },
    ...columns.map(({ width }) => width),
  ];
  const heads = ['', context.say('print.measure-solid'), ...columns.map((column) => withUnit(column, context))];
  const head = heads.map((text): Cell => headCell(text, headSize[context.print]));
  return { kind: 'table', columns: widths, head, rows, size, rules: 'grid', stands: 'middle' };
}

const headCell = (text: string, size: TextSize): readonly Block[] => [
  { kind: 'paragraph', text, size, font: 'bold', align: 'middle' },
];

/** mm. What a cell keeps free at its left and right, together. */
export const SIDES_MM = 3;
