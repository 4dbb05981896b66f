// The table of results, to be filled in by hand: the groups, what decides the places, and the place.

import type { Block } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { titleOf } from './head.ts';
import { orderOnPaper } from './order-on-paper.ts';
import { pagesOf } from './pages-of.ts';
import { sentence } from './sentence.ts';
import type { SheetKind } from './sheet-kind.ts';

const ROWS = { usual: 16, large: 13 } as const;

/** mm. */
const ROW_MM = 11;

export const results: SheetKind = {
  id: 'results',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  mostPages: ({ print, record }) => pagesOf(record.groups, ROWS[print]).length,
  blocks: (context) => {
    const { say, words } = context;
    const order = say('print.results-order', { order: orderOnPaper(context) });
    return [
      titleOf('results', context),
      { kind: 'fields', labels: [say('print.date')] },
      { kind: 'paragraph', text: sentence(order, words) },
      tableOf(context),
      { kind: 'list', mark: 'point', size: 'small', items: [say('print.rules-ties'), say('print.results-absent')] },
    ];
  },
};

function tableOf(context: SheetContext): Block {
  const { print, record, say } = context;
  const columns = decidedBy(context);
  const rows = pagesOf(record.groups, ROWS[print]).flat();
  return {
    kind: 'table',
    rules: 'grid',
    stands: 'middle',
    columns: [{ widthMm: 18 }, { share: 1.4 }, ...columns.map(() => ({ share: 1 })), { share: 1.4 }],
    head: [say('print.results-place'), say('print.group'), ...columns, say('print.results-note')],
    rows: rows.map((group) => ({ cells: ['', group?.name ?? '', ...columns.map(() => ''), ''], leastMm: ROW_MM })),
  };
}

/** What the places go by, each with its unit; the points too where there are any. */
function decidedBy({ challenge, inClass, say, words }: SheetContext): readonly string[] {
  const { ranking, points } = challenge;
  const keys = [ranking.first, ...ranking.tieBreaks].map(({ by }) => by);
  const all = points.length > 0 ? [...keys, 'points'] : keys;
  return [...new Set(all)].map((measure) => {
    const what = words.words.capital(inClass.label(measure));
    const unit = inClass.unit(measure).name;
    return unit === '' ? what : say('print.in-unit', { what, unit });
  });
}
