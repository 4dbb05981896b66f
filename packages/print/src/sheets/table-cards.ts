// Cards for the tables of the groups: the word with which a device gets in, as letters and as a code for the camera.

import type { Block, Row } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import type { TableCard } from './data.ts';
import { cautionsBox } from './head.ts';
import { pagesOf } from './pages-of.ts';
import { qrDrawing } from './qr-drawing.ts';
import type { SheetKind } from './sheet-kind.ts';

export const tableCards: SheetKind = {
  id: 'table-cards',
  reader: 'teacher',
  copyFor: 'class',
  needs: 'table-cards',
  mostPages: ({ cards }) => Math.ceil(cards.length / (ROWS * COLUMNS)),
  blocks: (context) => [
    { kind: 'paragraph', text: context.say('print.card-cut') },
    cardsTable(context),
    cautionsBox(['cutting'], context),
  ],
};

/** Cards on a page. */
const COLUMNS = 2;
const ROWS = 4;

/** mm. Four rows, and what stands around them, fill a page of Letter. */
const CARD_MM = 52;

/** mm. A camera half a metre away reads a code of this size (common practice, no source). */
const QR_MM = 38;

function cardsTable(context: SheetContext): Block {
  const rows = pagesOf(context.cards, COLUMNS).map(
    (cards): Row => ({
      cells: cards.map((card) => (card === null ? '' : cardOf(card, context))),
      leastMm: CARD_MM,
    }),
  );
  return { kind: 'table', rules: 'cut', columns: [{ share: 1 }, { share: 1 }], rows };
}

function cardOf({ group, word, qr }: TableCard, { say }: SheetContext): readonly Block[] {
  return [
    { kind: 'paragraph', text: group, size: 'large', font: 'bold' },
    {
      kind: 'columns',
      columns: [
        {
          share: 1,
          blocks: [
            { kind: 'paragraph', text: say('print.card-word'), size: 'small' },
            { kind: 'paragraph', text: inHalves(word), size: 'title', font: 'bold' },
            { kind: 'paragraph', text: say('print.card-how'), size: 'small' },
          ],
        },
        { share: 1, blocks: [qrDrawing(qr, QR_MM)] },
      ],
    },
  ];
}

/** Six letters as three and three, for reading out; on one line. */
const inHalves = (word: string): string => `${word.slice(0, 3)}\u00a0${word.slice(3)}`;
