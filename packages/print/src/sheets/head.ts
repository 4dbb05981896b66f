// The top of a sheet: what it is, of which challenge, and who fills it in. And the box with the cautions.

import type { CautionId } from '@cairnmark/words';
import type { Block } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import type { SheetId } from './sheet-kind.ts';

/** "Rule sheet: Tall Light". */
export const titleOf = (id: SheetId, { challenge, say }: SheetContext): Block => ({
  kind: 'heading',
  size: 'title',
  text: say('print.of', { sheet: say(`print.sheet-${id}`), challenge: challenge.name }),
});

/** Of a sheet that is about the kit alone. */
export const plainTitleOf = (id: SheetId, { say }: SheetContext): Block => ({
  kind: 'heading',
  size: 'title',
  text: say(`print.sheet-${id}`),
});

/** To write in who they are and when. */
export const groupAndDate = ({ say }: SheetContext): Block => ({
  kind: 'fields',
  labels: [say('print.group'), say('print.date')],
});

/** A box with what can hurt someone; the rules of the school always stand last. */
export function cautionsBox(ids: readonly CautionId[], { say, words }: SheetContext): Block {
  const { cautions } = words.words;
  const cell: readonly Block[] = [
    { kind: 'paragraph', text: say('print.take-care'), font: 'bold' },
    { kind: 'list', mark: 'point', size: 'small', items: [...ids, 'school-rules' as const].map((id) => cautions[id]) },
  ];
  return { kind: 'table', columns: [{ share: 1 }], rules: 'grid', rows: [{ cells: [cell] }] };
}
