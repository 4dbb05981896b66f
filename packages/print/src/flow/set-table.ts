// Tables, a slab a row. mm.

import type { Mark } from '../page/page.ts';
import { rectangle, segment, shifted, solidLine } from '../page/shapes.ts';
import { LINE_SHARE } from '../text/measure.ts';
import type { Cell, Row, Table } from './blocks.ts';
import type { Span } from './column-widths.ts';
import { spansOf } from './column-widths.ts';
import type { Room } from './room.ts';
import { setParagraph } from './set-text.ts';
import type { Slab } from './slab.ts';
import { slab, stacked } from './slab.ts';

/**
 * Content that is too wide for its cell, or higher than its row may be, is refused at ["blocks", 2, "rows", 3, "cells", 1].
 * Throws RangeError for a row that has not a cell for each column.
 */
export function setTable(table: Table, room: Room): readonly Slab[] {
  const spans = spansOf(table.columns, room.widthMm, 0);
  const set = (row: Row, look: Look, path: Room['path']): Slab => rowOf(row, look, table, spans, { ...room, path });
  const rows = table.rows.map((row, k) => set(row, 'row', [...room.path, 'rows', k]));
  if (table.head === undefined) return rows.map((row, k) => (k === 0 ? { ...row, gapMm: GAP_MM } : row));
  const head = set({ cells: table.head }, 'head', [...room.path, 'head']);
  return [{ ...head, gapMm: GAP_MM, keep: true }, ...rows.map((row) => ({ ...row, head }))];
}

type Look = 'head' | 'row';

/** mm. Above a table. */
const GAP_MM = 3;

/** mm. Between the lines of a cell and its content, at the sides and above and below; cards are cut out with scissors. */
const PADDING_MM: Readonly<Record<Table['rules'], readonly [sideMm: number, aboveMm: number]>> = {
  grid: [1.5, 1.2],
  cut: [5, 4],
  none: [1.5, 1.2],
};

function rowOf(row: Row, look: Look, table: Table, spans: readonly Span[], room: Room): Slab {
  const { cells, leastMm = 0, mostMm = Number.POSITIVE_INFINITY } = row;
  if (cells.length !== spans.length) throw new RangeError(`${cells.length} cells in ${spans.length} columns`);
  const [sideMm, aboveMm] = PADDING_MM[table.rules];
  const insides = spans.map(({ leftMm, widthMm }) => ({ leftMm: leftMm + sideMm, widthMm: widthMm - 2 * sideMm }));
  const contents = cells.map((cell, k) => {
    const path = [...room.path, ...(look === 'head' ? [k] : ['cells', k])];
    const content = stacked(setCell(cell, look, table, k, { ...room, widthMm: insides[k]?.widthMm ?? 0, path }));
    const neededMm = content.heightMm + 2 * aboveMm;
    if (neededMm > mostMm) refuseHeight(cell, neededMm, mostMm, { ...room, path });
    return { ...content, neededMm };
  });
  const lineMm = LINE_SHARE * room.sizes[table.size ?? 'body'] + 2 * aboveMm;
  const heightMm = Math.min(mostMm, Math.max(leastMm, lineMm, ...contents.map(({ neededMm }) => neededMm)));
  const marks = contents.flatMap((content, k) => {
    const spareMm = table.stands === 'middle' ? Math.max(0, heightMm - content.neededMm) / 2 : 0;
    return content.marks.map((mark) => shifted(mark, [insides[k]?.leftMm ?? 0, -aboveMm - spareMm]));
  });
  return slab(room.path, heightMm, [...rulesOf(table, look, spans, heightMm), ...marks], 0);
}

function setCell(cell: Cell, look: Look, { columns, size = 'body' }: Table, k: number, room: Room): readonly Slab[] {
  if (typeof cell !== 'string') return room.inside(cell, room.widthMm, room.path);
  if (cell === '') return [];
  const font = look === 'head' ? 'bold' : 'regular';
  return setParagraph({ kind: 'paragraph', text: cell, size, font, align: columns[k]?.align ?? 'left' }, room);
}

function refuseHeight(cell: Cell, neededMm: number, roomMm: number, { path, refuse }: Room): void {
  refuse(
    typeof cell === 'string'
      ? { code: 'text-too-high', path, details: { text: cell, neededMm, roomMm } }
      : { code: 'part-too-high', path, details: { neededMm, roomMm } },
  );
}

/** Lines that two rows share are drawn by both, from the same end, so that dashes fall on dashes. */
function rulesOf({ rules }: Table, look: Look, spans: readonly Span[], heightMm: number): readonly Mark[] {
  if (rules === 'none') return [];
  const bounds = [0, ...spans.map(({ leftMm, widthMm }) => leftMm + widthMm)];
  const widthMm = Math.max(...bounds);
  const shade = rectangle([0, -heightMm], widthMm, heightMm);
  const level = [0, -heightMm].map((y) => segment([0, y], [widthMm, y]));
  const upright = bounds.map((x) => segment([x, 0], [x, -heightMm]));
  const lines = [...level, ...upright].map((path): Mark => ({ ...solidLine(path, RULE_MM), dashMm: DASHES_MM[rules] }));
  return look === 'head' ? [{ kind: 'fill', paths: [shade], grey: HEAD_GREY }, ...lines] : lines;
}

/** mm of the lines of a table; grey of its head, on which black stays easy to read on a bad copy. */
const RULE_MM = 0.25;
const HEAD_GREY = 0.9;

const DASHES_MM = { grid: [], cut: [2, 1.5] } as const;
