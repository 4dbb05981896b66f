// Blocks set as slabs, each kind by its own file.

import { shifted } from '../page/shapes.ts';
import type { Block, Columns } from './blocks.ts';
import { spansOf } from './column-widths.ts';
import type { Room } from './room.ts';
import { setDrawing, setFields, setLines } from './set-blank.ts';
import { setTable } from './set-table.ts';
import { setHeading, setList, setParagraph } from './set-text.ts';
import type { Slab } from './slab.ts';
import { slab, stacked } from './slab.ts';

/** The path of each block is that of the room and its number. */
export const setBlocks = (blocks: readonly Block[], room: Omit<Room, 'inside'>): readonly Slab[] =>
  blocks.flatMap((block, k) =>
    setBlock(block, {
      ...room,
      path: [...room.path, k],
      inside: (inner, widthMm, path) => setBlocks(inner, { ...room, widthMm, path }),
    }),
  );

function setBlock(block: Block, room: Room): readonly Slab[] {
  switch (block.kind) {
    case 'heading':
      return setHeading(block, room);
    case 'paragraph':
      return setParagraph(block, room);
    case 'list':
      return setList(block, room);
    case 'table':
      return setTable(block, room);
    case 'columns':
      return setColumns(block, room);
    case 'lines':
      return setLines(block, room);
    case 'fields':
      return setFields(block, room);
    case 'drawing':
      return setDrawing(block, room);
    case 'gap':
      return [slab(room.path, block.heightMm, [], 0)];
    case 'new-page':
      return [{ ...slab(room.path, 0, [], 0), newPage: true }];
  }
}

function setColumns({ columns }: Columns, room: Room): readonly Slab[] {
  const spans = spansOf(columns, room.widthMm, COLUMN_GAP_MM);
  const set = columns.map(({ blocks }, k) => {
    const { leftMm, widthMm } = spans[k] ?? { leftMm: 0, widthMm: 0 };
    const { heightMm, marks } = stacked(room.inside(blocks, widthMm, [...room.path, 'columns', k]));
    return { heightMm, marks: marks.map((mark) => shifted(mark, [leftMm, 0])) };
  });
  const heightMm = Math.max(0, ...set.map((column) => column.heightMm));
  return [
    slab(
      room.path,
      heightMm,
      set.flatMap(({ marks }) => marks),
      ABOVE_MM,
    ),
  ];
}

/** mm. Between columns, and above them. */
const COLUMN_GAP_MM = 8;
const ABOVE_MM = 2.5;
