// What the Print screen asks its worker: the pages of sheets, and of nets. Plain data both ways.

import type { ClassRecord } from '@cairnmark/engine';
import type { Ruler, SolidSpec } from '@cairnmark/geometry';
import type { GroundSheet, NetOrder, Page, PaperSize, Print, SheetId } from '@cairnmark/print';
import type { Language } from '@cairnmark/words';
import type { Message, Question, WorkerClient } from './worker-client.ts';

/** Sheets of the lesson, ground sheets, and strips for paper balls. */
export type PaperId = SheetId | `ground-${GroundSheet}` | 'gores';

export interface SheetsAsk {
  /** Without its attempts: no sheet shows any. */
  readonly record: ClassRecord;
  readonly challenge: string;
  /** As lengths are shown on this device. */
  readonly ruler: Ruler;
  readonly pupils: number;
  /** Sheets of paper for the nets of one group; null: not known. */
  readonly netPages: number | null;
  readonly paper: PaperSize;
  readonly print: Print;
  readonly language: Language;
}

export interface MadeSheet {
  readonly id: PaperId;
  readonly name: string;
  /** One copy. Empty: it cannot be made, and `told` says why. */
  readonly pages: readonly Page[];
  readonly told: readonly string[];
}

export interface NetsAsk extends Omit<NetOrder, 'kinds'> {
  readonly kinds: readonly {
    readonly id: string;
    readonly name: string;
    readonly spec: SolidSpec;
    readonly count: number;
    readonly base: 'closed' | 'open';
  }[];
  readonly ruler: Ruler;
  readonly language: Language;
}

export interface MadeNets {
  readonly pages: readonly Page[];
  /** How often each page is needed. */
  readonly copies: readonly number[];
  /** What is not among them, a sentence each. */
  readonly told: readonly string[];
}

export interface PrintQuestions {
  readonly sheets: { readonly ask: SheetsAsk; readonly answer: readonly MadeSheet[] };
  readonly nets: { readonly ask: NetsAsk; readonly answer: MadeNets };
}

export type PrintClient = WorkerClient<PrintQuestions>;
export type PrintQuestion = Question<PrintQuestions>;
export type PrintMessage = Message<PrintQuestions>;
