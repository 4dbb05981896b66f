// A blank measuring table for pupils who design solids of their own.

import type { Block } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { groupAndDate, plainTitleOf } from './head.ts';
import { olderColumns, withUnit, youngColumns } from './measure-columns.ts';
import { countedText } from './measuring.ts';
import type { SheetKind } from './sheet-kind.ts';

export const measureOwn: SheetKind = {
  id: 'measure-own',
  reader: 'pupils',
  copyFor: 'pair',
  needs: null,
  mostPages: () => 1,
  blocks: (context) => [
    plainTitleOf('measure-own', context),
    groupAndDate(context),
    { kind: 'paragraph', text: context.say('print.own-how') },
    tableOf(context),
    { kind: 'paragraph', text: countedText(context), size: 'small' },
  ],
};

const ROWS = { usual: 6, large: 5 } as const;

/** mm. As on the table for young pupils: room to sketch. */
const ROW_MM = 29;
const SKETCH_MM = 56;
const SIZES_MM = 40;

function tableOf(context: SheetContext): Block {
  const { challenge, inClass, print, say } = context;
  const young = challenge.gradePreset === 'grades-2-3';
  const counts = youngColumns(context).filter(({ id }) => id !== 'longest-edge');
  const columns = young ? counts : [...counts, ...olderColumns(context).filter(({ id }) => id === 'volume')];
  const head = [say('print.own-sketch'), say('print.own-sizes', { unit: inClass.unit('height').name })];
  return {
    kind: 'table',
    columns: [{ widthMm: SKETCH_MM }, { widthMm: SIZES_MM }, ...columns.map(({ width }) => width)],
    head: [...head, ...columns.map((column) => withUnit(column, context))],
    rows: Array.from({ length: ROWS[print] }, () => ({ cells: ['', '', ...columns.map(() => '')], leastMm: ROW_MM })),
    size: young ? 'body' : 'small',
    rules: 'grid',
  };
}
