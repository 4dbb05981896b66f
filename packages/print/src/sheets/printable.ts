// Signs that sentences on screens have and the fonts of a sheet have not, in letters and signs that these have. What people
// typed may hold others: those are refused, and told.

import type { Block, Cell, Row } from '../flow/blocks.ts';

export const printable = (blocks: readonly Block[]): readonly Block[] => blocks.map(printableBlock);

function printableBlock(block: Block): Block {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return { ...block, text: plain(block.text) };
    case 'list':
      return { ...block, items: block.items.map(plain) };
    case 'fields':
      return { ...block, labels: block.labels.map(plain) };
    case 'columns':
      return { ...block, columns: block.columns.map((one) => ({ ...one, blocks: printable(one.blocks) })) };
    case 'table': {
      const head = block.head === undefined ? {} : { head: block.head.map(printableCell) };
      return { ...block, ...head, rows: block.rows.map(printableRow) };
    }
    default:
      return block;
  }
}

const printableRow = (row: Row): Row => ({ ...row, cells: row.cells.map(printableCell) });

const printableCell = (cell: Cell): Cell => (typeof cell === 'string' ? plain(cell) : printable(cell));

/** "π as 3.14" as "pi as 3.14"; the true minus as the dash that is as wide. */
const plain = (text: string): string => text.replaceAll('π', 'pi').replaceAll('−', '–');
