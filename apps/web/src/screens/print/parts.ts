// What is to be printed, part by part: which pages, and how often. Pure.

import type { ClassRecord } from '@cairnmark/engine';
import type { CopyFor, Page } from '@cairnmark/print';
import { copiesOf, SHEETS } from '@cairnmark/print';
import type { MadeNets, MadeSheet, PaperId } from '../../workers/print-questions.ts';
import type { Made } from '../../workers/use-print.ts';
import type { PartId, PrintSettings } from './settings.ts';
import { arrangementOf } from './settings.ts';

export interface PrintPart {
  readonly id: PartId;
  readonly name: string;
  /** Each once; empty: it cannot be printed, or is not worked out yet. */
  readonly pages: readonly Page[];
  /** How often each page is printed. */
  readonly copies: readonly number[];
  /** Why it is not printed, or what is not on it. */
  readonly told: readonly string[];
}

/**
 * Sheets of paper for the nets of one group, as far as the pages tell: with masters, which are copied, and with every piece
 * that the class has they do not. null, too, while the nets are worked out anew: the last pages are of other settings.
 */
export function netPagesOf(
  { value, working }: Pick<Made<MadeNets>, 'value' | 'working'>,
  settings: PrintSettings,
): number | null {
  if (value === null || working || settings.pieces === 'stock') return null;
  switch (arrangementOf(settings)) {
    case 'sets':
      return value.pages.length;
    case 'mixed':
      return Math.ceil(value.pages.length / settings.sets);
    case 'masters':
      return null;
  }
}

/** For whom a section of the list is. */
export type Reader = 'pupils' | 'teacher' | 'photos';

/** Every part there is, in the order of the day; `made` and `nets` as far as they are worked out. */
export function printParts(
  made: readonly MadeSheet[],
  nets: MadeNets | null,
  netsName: string,
  record: ClassRecord,
  settings: PrintSettings,
): readonly PrintPart[] {
  const { pupils, copies, sets } = settings;
  const copiesFor = (id: PaperId): number => (copies === 'one' ? 1 : copiesOf(copyForOf(id), { record, pupils }));
  const times = arrangementOf(settings) === 'sets' ? sets : 1;
  const netCopies = (nets?.copies ?? []).map((count) => (copies === 'one' ? 1 : count * times));
  return [
    { id: 'nets', name: netsName, pages: nets?.pages ?? [], copies: netCopies, told: nets?.told ?? [] },
    ...made.map((sheet) => ({ ...sheet, copies: sheet.pages.map(() => copiesFor(sheet.id)) })),
  ];
}

/** Where photographs are taken each group has a ground sheet. */
export function copyForOf(id: PaperId): CopyFor {
  if (isGround(id)) return 'group';
  return id === 'gores' ? 'class' : SHEETS[id].copyFor;
}

export function readerOf(id: PaperId): Reader {
  if (isGround(id)) return 'photos';
  return id === 'gores' ? 'teacher' : SHEETS[id].reader;
}

const isGround = (id: PaperId): id is Extract<PaperId, `ground-${string}`> => id.startsWith('ground-');

export const pagesIn = (parts: readonly PrintPart[]): number =>
  parts.flatMap(({ copies }) => copies).reduce((sum, count) => sum + count, 0);

/** All pages in the order in which they leave the printer: one whole copy of a sheet after the other. */
export const inOrder = (parts: readonly PrintPart[]): readonly Page[] =>
  parts.flatMap(({ pages, copies }) =>
    Array.from({ length: Math.max(0, ...copies) }, (_, done) =>
      pages.filter((_page, k) => (copies[k] ?? 0) > done),
    ).flat(),
  );
