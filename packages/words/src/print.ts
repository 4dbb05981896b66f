// Texts of the sheets that are printed, and of what keeps one from being printed. They come when a sheet is made.

import type { Issue, Ruler } from '@cairnmark/geometry';
import type { NetIssueCode } from '@cairnmark/nets';
import type { Catalogue } from './catalogue.ts';
import type { printed } from './en/print/index.ts';
import type { Language } from './language.ts';
import { trimmed } from './numbers.ts';
import { inFull } from './quantities.ts';
import { fill } from './say.ts';
import type { TextsOf, TextWords } from './text-words.ts';
import { textWords } from './text-words.ts';
import type { Words } from './words.ts';

export type EnglishPrint = (typeof printed)['texts'];
export type PrintKey = keyof EnglishPrint;

/** What can keep a sheet from being printed; the package print finds it. */
export type PrintIssueCode =
  | 'character-unprintable'
  | 'text-too-wide'
  | 'text-too-high'
  | 'part-too-wide'
  | 'part-too-high'
  | 'outline-too-large'
  | 'pages-too-many'
  | 'no-supply-game'
  | 'no-table-cards'
  | 'no-marks';
export type PrintIssueTexts = Readonly<Record<PrintIssueCode, string>>;

export interface PrintCatalogue {
  readonly decimalMark: Catalogue['decimalMark'];
  readonly texts: TextsOf<EnglishPrint>;
  readonly issues: PrintIssueTexts;
}

export interface PrintWords extends TextWords<EnglishPrint> {
  /** What is wrong with a sheet, and what to do. */
  issue(issue: Issue<PrintIssueCode>): string;
  /** Why there is no net of a kind on the pages, and what to do. Lengths are told as the ruler reads, never more. */
  leftOut(kind: string, issue: Issue<NetIssueCode>, words: Words, ruler: Ruler): string;
}

export const printWordsIn = (language: Language, { decimalMark, texts, issues }: PrintCatalogue): PrintWords => ({
  ...textWords(language, texts),
  issue: ({ code, details }) => {
    const told = Object.entries(details).map(([key, value]) => [key, valueText(key, value, decimalMark)]);
    return fill(issues[code], Object.fromEntries(told));
  },
  leftOut: (kind, { code, details }, words, ruler) => {
    if (code === 'no-net') return fill(texts['print.no-net'], { kind });
    const sizes: Readonly<Record<string, string>> = words.names.sizes;
    const most = inFull(downTo(Number(details['largestMm']), ruler.stepMm), 'mm', ruler, decimalMark);
    const told = { ...details, kind, most, size: sizes[String(details['size'])] ?? '' };
    return fill(texts[Number(details['parts']) > 0 ? 'print.net-too-large' : 'print.face-too-large'], told);
  },
});

/** Lengths get their unit, to a tenth of a mm. */
const valueText = (key: string, value: string | number, mark: string): string | number =>
  typeof value === 'number' && key.endsWith('Mm') ? `${trimmed(value, 0, 1, mark)} mm` : value;

/** The division of the ruler below; a length below the first division stays as it is. */
const downTo = (lengthMm: number, stepMm: number): number => Math.floor(lengthMm / stepMm) * stepMm || lengthMm;
