// A sheet for a lesson, by its name in the catalogue, as pages.

import type { Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { Block } from '../flow/blocks.ts';
import { layOut } from '../flow/lay-out.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { Sheet } from '../frame/frame.ts';
import { framed } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import type { Page } from '../page/page.ts';
import { SHEETS } from './catalogue.ts';
import type { SheetContext } from './context.ts';
import { contextOf } from './context.ts';
import type { SheetData } from './data.ts';
import { isMet } from './needs.ts';
import { printable } from './printable.ts';
import type { SheetId, SheetKind, SheetNeed } from './sheet-kind.ts';

/**
 * The pages of a sheet. Refused with 'no-supply-game', 'no-table-cards' or 'no-marks' where the class has nothing to
 * put on it (`lacking` tells before), and where what people typed does not fit or cannot be printed.
 */
export function makeSheet(id: SheetId, data: SheetData): Result<readonly Page[], PrintIssue> {
  const need = lacking(id, data);
  if (need !== null) return failure([{ code: `no-${need}`, path: ['sheet', id], details: {} }]);
  const sheet = laidOut(SHEETS[id], contextOf(data));
  return sheet.ok ? framed(sheet.value, data.words.printed) : sheet;
}

/** In the largest of its sizes that needs one page; where none does, in the last of them on as many as it may have. */
function laidOut(
  { blocks, id, mostPages, sizes = ['body'] }: SheetKind,
  context: SheetContext,
): Result<Sheet, PrintIssue> {
  const { paper: size, print, record, words } = context;
  const name = nameOf(id, record.invented, words.printed);
  const laid = (text: TextSize, most: number): Result<Sheet, PrintIssue> => {
    const set = printable(blocks(context, text));
    return layOut(name, set, {
      paper: { size, orientation: 'portrait' },
      print,
      mostPages: most,
      follow: (page) => words.printed.say('print.follow', { sheet: titleIn(set) ?? name, page }),
    });
  };
  const smallest = sizes.at(-1) ?? 'body';
  if (print === 'large') return laid('body', LARGE_TIMES * mostPages(context));
  for (const text of sizes.slice(0, -1)) {
    const onePage = laid(text, 1);
    if (onePage.ok) return onePage;
  }
  return laid(smallest, mostPages(context));
}

const titleIn = ([first]: readonly Block[]): string | null =>
  first?.kind === 'heading' && first.size === 'title' ? first.text : null;

/** What the class does not have, and without which the sheet would say nothing. */
export function lacking(id: SheetId, data: Pick<SheetData, 'challenge' | 'cards'>): SheetNeed | null {
  const { needs } = SHEETS[id];
  return needs === null || isMet(needs, data) ? null : needs;
}

/** Letters of 1.64 times the size take up to 2.7 times the room, and more where a table has to be parted. */
const LARGE_TIMES = 4;

/** Stands at the foot; made-up data is marked so wherever it is shown. */
function nameOf(id: SheetId, invented: boolean, { say }: SheetData['words']['printed']): string {
  const sheet = say(`print.sheet-${id}`);
  return invented ? say('print.invented', { sheet }) : sheet;
}
