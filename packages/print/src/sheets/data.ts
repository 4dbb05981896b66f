// What a sheet is made of: the class, one of its challenges, and how it is to be printed.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import type { Ruler } from '@cairnmark/geometry';
import type { PlanWords, PrintWords, ScreenWords, Words } from '@cairnmark/words';
import type { Print } from '../flow/sizes.ts';
import type { PaperSize } from '../page/paper.ts';

export interface SheetData {
  readonly record: ClassRecord;
  /** One of the record's: its kit, its rules, its way of counting. */
  readonly challenge: Challenge;
  /** The ruler that lengths are told with: that of the challenge, or the one that the device was set to. */
  readonly ruler: Ruler;
  /** In the whole class, as the teacher says: the record knows of no pupils. */
  readonly pupils: number;
  /** Pages of nets for one set of the kit; null: nets are not printed, or not packed yet. */
  readonly netPages: number | null;
  /** One for each group that has a table word; [] where there is no class server. */
  readonly cards: readonly TableCard[];
  readonly paper: PaperSize;
  readonly print: Print;
  readonly words: SheetWords;
}

/** All in one language. */
export interface SheetWords {
  readonly words: Words;
  readonly printed: PrintWords;
  /** The texts with which the Challenge screen reads a challenge out, and those of the record sheet. */
  readonly plan: PlanWords;
  readonly screen: ScreenWords;
}

export interface TableCard {
  /** Name of the group. */
  readonly group: string;
  /** Six letters. */
  readonly word: string;
  /** Rows of the code from the top, true where it is dark; with the quiet ground of four squares all round. */
  readonly qr: readonly (readonly boolean[])[];
}
