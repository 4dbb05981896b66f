// Headings, paragraphs and lists, set line by line.

import type { Mark } from '../page/page.ts';
import { rectangle, shifted, solidLine } from '../page/shapes.ts';
import { LINE_SHARE, textWidthMm } from '../text/measure.ts';
import type { Wrapped } from '../text/wrap.ts';
import type { Heading, List, Paragraph } from './blocks.ts';
import type { Room } from './room.ts';
import { lineOf, wrapped } from './room.ts';
import type { Slab } from './slab.ts';
import { slab } from './slab.ts';

/** A heading keeps its lines together, and with what follows. */
export function setHeading({ text, size }: Heading, room: Room): readonly Slab[] {
  const set = wrapped(text, 'bold', size, room.widthMm, room);
  const gapMm = HEADING_GAP_SHARE * room.sizes[size];
  return linesOf(set, 'left', room, gapMm).map((line) => ({ ...line, keep: true }));
}

/** No unit (of the font size). Space above a heading, and above a paragraph. */
const HEADING_GAP_SHARE = 0.9;
const PARAGRAPH_GAP_SHARE = 0.6;

export function setParagraph(paragraph: Paragraph, room: Room): readonly Slab[] {
  const { text, size = 'body', font = 'regular', align = 'left' } = paragraph;
  const set = wrapped(text, font, size, room.widthMm, room);
  return linesOf(set, align, room, PARAGRAPH_GAP_SHARE * room.sizes[size]);
}

export function setList({ items, mark, size = 'body' }: List, room: Room): readonly Slab[] {
  const sizeMm = room.sizes[size];
  const indentMm = indentOf(mark, items.length, sizeMm);
  return items.flatMap((item, k) => {
    const itemRoom = { ...room, widthMm: room.widthMm - indentMm, path: [...room.path, 'items', k] };
    const set = wrapped(item, 'regular', size, itemRoom.widthMm, itemRoom);
    const gapMm = (k === 0 ? PARAGRAPH_GAP_SHARE : ITEM_GAP_SHARE[mark]) * sizeMm;
    return linesOf(set, 'left', itemRoom, gapMm).map((line, number) => {
      const text = line.marks.map((one) => shifted(one, [indentMm, 0]));
      return { ...line, marks: number === 0 ? [markOf(mark, k, set), ...text] : text };
    });
  });
}

const ITEM_GAP_SHARE: Readonly<Record<List['mark'], number>> = { point: 0.25, number: 0.25, box: 0.5 };

/** Room for the widest number, or for the point or box. */
function indentOf(mark: List['mark'], count: number, sizeMm: number): number {
  if (mark !== 'number') return 1.4 * sizeMm;
  return textWidthMm(`${count}. `, { font: 'regular', sizeMm }) + 0.3 * sizeMm;
}

function markOf(mark: List['mark'], k: number, { font, sizeMm }: Wrapped): Mark {
  const type = { font, sizeMm };
  switch (mark) {
    case 'point':
      return lineOf('•', type, 'left', 0, 0);
    case 'number':
      return lineOf(`${k + 1}.`, type, 'left', 0, 0);
    case 'box':
      return solidLine(rectangle([0.1 * sizeMm, -1.05 * sizeMm], 0.85 * sizeMm, 0.85 * sizeMm), BOX_LINE_MM);
  }
}

/** mm. */
const BOX_LINE_MM = 0.3;

/** A slab a line; neither the first nor the last line of a text stands alone on a page. */
function linesOf(set: Wrapped, align: Paragraph['align'] & string, room: Room, gapMm: number): readonly Slab[] {
  const { lines, ...type } = set;
  return lines.map((line, k) => ({
    ...slab(
      room.path,
      LINE_SHARE * type.sizeMm,
      line === '' ? [] : [lineOf(line, type, align, room.widthMm, 0)],
      k === 0 ? gapMm : 0,
    ),
    keep: k < lines.length - 1 && (k === 0 || k === lines.length - 2),
  }));
}
