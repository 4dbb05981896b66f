// A sheet for a lesson, by its name in the catalogue, as pages.

import type { Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import { layOut } from '../flow/lay-out.ts';
import { framed } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import type { Page } from '../page/page.ts';
import { SHEETS } from './catalogue.ts';
import { contextOf } from './context.ts';
import type { SheetData } from './data.ts';
import { printable } from './printable.ts';
import type { SheetId, SheetNeed } from './sheet-kind.ts';

/**
 * The pages of a sheet. Refused with 'no-supply-game' or 'no-table-cards' where the class has nothing to put on it
 * (`lacking` tells before), and where what people typed does not fit or cannot be printed.
 */
export function makeSheet(id: SheetId, data: SheetData): Result<readonly Page[], PrintIssue> {
  const need = lacking(id, data);
  if (need !== null) return failure([{ code: `no-${need}`, path: ['sheet', id], details: {} }]);
  const context = contextOf(data);
  const { blocks, mostPages } = SHEETS[id];
  const { paper: size, print, record, words } = data;
  const most = mostPages(context) * (print === 'large' ? LARGE_TIMES : 1);
  const layout = { paper: { size, orientation: 'portrait' }, print, mostPages: most } as const;
  const sheet = layOut(nameOf(id, record.invented, words.printed), printable(blocks(context)), layout);
  return sheet.ok ? framed(sheet.value, words.printed) : sheet;
}

/** What the class does not have, and without which the sheet would say nothing. */
export function lacking(id: SheetId, { challenge, cards }: Pick<SheetData, 'challenge' | 'cards'>): SheetNeed | null {
  const { needs } = SHEETS[id];
  const isThere = { 'supply-game': challenge.supply !== null, 'table-cards': cards.length > 0 };
  return needs === null || isThere[needs] ? null : needs;
}

/** Large print has letters of 1.64 times the size, and takes up to the square of it in room. */
const LARGE_TIMES = 3;

/** Stands at the foot; made-up data is marked so wherever it is shown. */
function nameOf(id: SheetId, invented: boolean, { say }: SheetData['words']['printed']): string {
  const sheet = say(`print.sheet-${id}`);
  return invented ? say('print.invented', { sheet }) : sheet;
}
