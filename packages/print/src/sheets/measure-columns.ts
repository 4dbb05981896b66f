// The columns of the measuring tables; the answer key has the same, so that one can be laid beside the other.

import { isShown } from '@cairnmark/engine';
import type { Column } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';

export type MeasureColumnId =
  | 'longest-edge'
  | 'height'
  | 'faces'
  | 'curved-surfaces'
  | 'edges'
  | 'corners'
  | 'slant'
  | 'surface'
  | 'volume';

export interface MeasureColumn {
  readonly id: MeasureColumnId;
  readonly name: string;
  /** As written behind numbers; '' for a count. */
  readonly unit: string;
  readonly width: Column;
}

/** What young pupils can find with a ruler and a finger. */
export const youngColumns = (context: SheetContext): readonly MeasureColumn[] =>
  ['longest-edge' as const, 'faces' as const, 'edges' as const, 'corners' as const].map((id) => columnOf(id, context));

/** All that a solid has, less what the challenge keeps from the class. */
export function olderColumns(context: SheetContext): readonly MeasureColumn[] {
  const { challenge } = context;
  const [paper, volume] = [isShown('paper', challenge), isShown('volume', challenge)];
  return ALL.filter((id) => {
    if (id === 'surface' || id === 'slant') return paper;
    return id === 'volume' ? volume : true;
  }).map((id) => columnOf(id, context));
}

/** The columns of each table: in large print so many need two. */
export function inTables(
  columns: readonly MeasureColumn[],
  { print }: SheetContext,
): readonly (readonly MeasureColumn[])[] {
  if (print === 'usual' || columns.length <= MOST_IN_LARGE) return [columns];
  return [columns.slice(0, MOST_IN_LARGE), columns.slice(MOST_IN_LARGE)];
}

/** "Volume, cm³". */
export const withUnit = ({ name, unit }: MeasureColumn, { say }: SheetContext): string =>
  unit === '' ? name : say('print.in-unit', { what: name, unit });

const ALL: readonly MeasureColumnId[] = [
  'longest-edge',
  'height',
  'faces',
  'curved-surfaces',
  'edges',
  'corners',
  'slant',
  'surface',
  'volume',
];

const MOST_IN_LARGE = 5;

const columnOf = (id: MeasureColumnId, context: SheetContext): MeasureColumn => ({
  id,
  name: context.words.words.capital(nameOf(id, context)),
  unit: context.inClass.unit(LIKE[id]).name,
  width: { share: WIDE[id] ?? 1, align: 'middle' },
});

/** No unit (of a usual column). "Superficies" is the longest word of the heads, and amounts are the longest numbers. */
const WIDE: Readonly<Partial<Record<MeasureColumnId, number>>> = { 'curved-surfaces': 1.2, surface: 1.3, volume: 1.3 };

/** A measure in the same unit. */
const LIKE: Readonly<Record<MeasureColumnId, string>> = {
  'longest-edge': 'height',
  height: 'height',
  faces: 'faces',
  'curved-surfaces': 'curved-surfaces',
  edges: 'edges',
  corners: 'corners',
  slant: 'height',
  surface: 'paper',
  volume: 'volume',
};

function nameOf(id: MeasureColumnId, { challenge, say, words }: SheetContext): string {
  const { measures, sizes } = words.words.names;
  const all = challenge.counting === 'all-surfaces';
  switch (id) {
    case 'longest-edge':
      return say('print.measure-longest-edge');
    case 'surface':
      return say('print.measure-surface');
    case 'slant':
      return sizes.slant;
    case 'faces':
      return all ? measures.faces : measures['flat-faces'];
    case 'edges':
      return all ? measures.edges : measures['straight-edges'];
    default:
      return measures[id];
  }
}
