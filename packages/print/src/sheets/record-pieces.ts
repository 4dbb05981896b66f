// How many pieces of each kind the groups have built with, for typing in afterwards.

import type { Group } from '@cairnmark/engine';
import type { Block } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { titleOf } from './head.ts';
import { pagesOf } from './pages-of.ts';
import type { SheetKind } from './sheet-kind.ts';

/** Groups beside each other: fewer in large print, so that their names fit. */
const COLUMNS = { usual: 6, large: 3 } as const;

/** mm. */
const ROW_MM = 9;

export const recordPieces: SheetKind = {
  id: 'record-pieces',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  // A kit may have more kinds than a page has rows.
  mostPages: ({ challenge, record }) =>
    pagesOf(record.groups, COLUMNS.usual).length * Math.ceil((challenge.kit.kinds.length + 1) / 20),
  blocks: (context) =>
    pagesOf(context.record.groups, COLUMNS[context.print]).flatMap((groups, k): readonly Block[] => [
      ...(k === 0 ? [] : [{ kind: 'new-page' as const }]),
      titleOf('record-pieces', context),
      { kind: 'paragraph', text: context.say('print.record-pieces-how') },
      tableOf(groups, context),
    ]),
};

function tableOf(groups: readonly (Group | null)[], { challenge, say }: SheetContext): Block {
  const row = (name: string) => ({ cells: [name, ...groups.map(() => '')], leastMm: ROW_MM });
  return {
    kind: 'table',
    rules: 'grid',
    stands: 'middle',
    columns: [{ share: 1.8 }, ...groups.map(() => ({ share: 1 }))],
    head: [say('print.record-kind'), ...groups.map((group) => group?.name ?? '')],
    rows: [...challenge.kit.kinds.map(({ name }) => row(name)), row(say('print.record-together'))],
  };
}
