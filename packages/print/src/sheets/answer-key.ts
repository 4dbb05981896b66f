// The answer key, for the teacher: the measuring table with the true values.

import type { KindOfPiece } from '@cairnmark/engine';
import type { Block, Column, Row } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { titleOf } from './head.ts';
import type { KeyAmount, KeyValues } from './key-values.ts';
import { keyValues } from './key-values.ts';
import type { MeasureColumn, MeasureColumnId } from './measure-columns.ts';
import { inTables, olderColumns } from './measure-columns.ts';
import { pagesOf } from './pages-of.ts';
import type { SheetKind } from './sheet-kind.ts';

/** Kinds on a page. */
const ROWS = { usual: 14, large: 5 } as const;

export const answerKey: SheetKind = {
  id: 'answer-key',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  mostPages: ({ challenge, print }) => pagesOf(challenge.kit.kinds, ROWS[print]).length,
  blocks: (context) => {
    const { say } = context;
    return [
      titleOf('answer-key', context),
      { kind: 'paragraph', text: say('print.for-teacher'), font: 'bold' },
      ...tablesOf(context),
      { kind: 'list', mark: 'point', size: 'small', items: notesOf(context) },
    ];
  },
};

function notesOf(context: SheetContext): readonly string[] {
  const { challenge, say, sayPlan, words } = context;
  const hasAmounts = olderColumns(context).some(({ id }) => id === 'surface' || id === 'volume');
  return [
    sayPlan('kit.counted', { convention: words.words.names.counting[challenge.counting] }),
    say('print.key-lengths'),
    ...(hasAmounts
      ? [say('print.key-pi', { pi: words.words.names.pi[challenge.own.pi] }), say('print.key-agrees')]
      : []),
    say('print.key-own'),
  ];
}

/** mm. */
const NAME_MM = { usual: 40, large: 60 } as const;

/** In large print all tables of a few kinds stand on one page. */
function tablesOf(context: SheetContext): readonly Block[] {
  const { challenge, print } = context;
  return pagesOf(challenge.kit.kinds, ROWS[print]).flatMap((kinds, k): readonly Block[] => [
    ...(k === 0 ? [] : [{ kind: 'new-page' as const }]),
    ...inTables(olderColumns(context), context).map((columns) => tableOf(kinds, columns, context)),
  ]);
}

function tableOf(
  kinds: readonly (KindOfPiece | null)[],
  columns: readonly MeasureColumn[],
  context: SheetContext,
): Block {
  const ids = columns.map(({ id }) => id);
  return {
    kind: 'table',
    columns: [
      { widthMm: NAME_MM[context.print] },
      ...columns.map(({ width }): Column => ({ ...width, align: 'right' })),
    ],
    head: [context.say('print.measure-solid'), ...columns.map(({ name }) => name)],
    rows: kinds.flatMap((kind) => (kind === null ? [] : [rowOf(kind, ids, context)])),
    size: 'small',
    rules: 'grid',
  };
}

function rowOf(kind: KindOfPiece, ids: readonly MeasureColumnId[], context: SheetContext): Row {
  const solid = context.solids.get(kind.id);
  const values = solid === undefined ? null : keyValues(kind.solid, solid, context.challenge);
  const name = `${kind.name}\n${context.inClass.sizes(kind.solid)}`;
  return { cells: [name, ...ids.map((id) => (values === null ? '' : cellOf(id, values, context)))] };
}

function cellOf(id: MeasureColumnId, values: KeyValues, context: SheetContext): string {
  const { ruler, say, words } = context;
  const length = (valueMm: number | null): string =>
    valueMm === null ? say('print.key-none') : unbroken(context.inClass.amount('height', valueMm, ruler.stepMm));
  switch (id) {
    case 'longest-edge':
      return length(values.longestEdgeMm);
    case 'height':
      return length(values.heightMm);
    case 'slant':
      return values.slantsMm.length === 0 ? length(null) : values.slantsMm.map(length).join('\n');
    case 'surface':
      return amountText('paper', values.surface, context);
    case 'volume':
      return amountText('volume', values.volume, context);
    default:
      return words.words.number(values.counts[id]);
  }
}

function amountText(measure: 'paper' | 'volume', amount: KeyAmount | null, { inClass, say }: SheetContext): string {
  if (amount === null) return say('print.key-none');
  const { value, tolerance } = amount;
  return [inClass.amount(measure, value, tolerance), inClass.error(measure, tolerance)].map(unbroken).join('\n');
}

/** A number and its unit stay together. */
const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');
