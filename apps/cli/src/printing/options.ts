// The options of printing: as they were typed, and what is wrong with them.

import type { PaperSize, SheetId } from '@cairnmark/print';
import { PAPER_SIZES, SHEETS } from '@cairnmark/print';
import type { TerminalWords } from '@cairnmark/words';

export const PRINTED = ['nets', 'sheets', 'ground', 'gores'] as const;
export type Printed = (typeof PRINTED)[number];

export const PRINT_OPTIONS = {
  what: { type: 'string' },
  paper: { type: 'string' },
  out: { type: 'string', short: 'o' },
  svg: { type: 'string' },
  sets: { type: 'string' },
  masters: { type: 'boolean' },
  split: { type: 'boolean' },
  sheet: { type: 'string' },
  'large-print': { type: 'boolean' },
  pupils: { type: 'string' },
  forts: { type: 'boolean' },
} as const;

export type PrintOptionName = keyof typeof PRINT_OPTIONS;

/** What was typed behind an option; true for one that takes no value. */
export type PrintTyped = Readonly<Partial<Record<PrintOptionName, string | boolean>>>;

export const PRINT_CHOICES: Readonly<Partial<Record<PrintOptionName, readonly string[]>>> = {
  what: PRINTED,
  paper: PAPER_SIZES,
};

export interface PrintOptions {
  readonly what: Printed;
  /** null: that of the class's country, as its ruler tells. */
  readonly paper: PaperSize | null;
  /** Name of the PDF; null: only drawings are made. */
  readonly out: string | null;
  readonly svg: string | null;
  readonly sets: number;
  readonly masters: boolean;
  readonly split: boolean;
  /** null: all of them. */
  readonly sheet: SheetId | null;
  readonly largePrint: boolean;
  readonly pupils: number | null;
  readonly forts: boolean;
}

/** The options, or a sentence for each that cannot be followed. */
export function readPrintOptions(
  typed: PrintTyped,
  help: string,
  words: TerminalWords,
): { readonly options: PrintOptions; readonly faults: readonly string[] } {
  const what = PRINTED.find((one) => one === typed.what) ?? 'nets';
  const [out, svg, sheet] = [textOf(typed.out), textOf(typed.svg), textOf(typed.sheet)];
  const known = Object.values(SHEETS).map(({ id }) => id);
  const options: PrintOptions = {
    what,
    paper: PAPER_SIZES.find((one) => one === typed.paper) ?? null,
    out,
    svg,
    sets: wholeIn(typed.sets, MOST_SETS) ?? 1,
    masters: typed.masters === true,
    split: typed.split === true,
    sheet: known.find((id) => id === sheet) ?? null,
    largePrint: typed['large-print'] === true,
    pupils: wholeIn(typed.pupils, MOST_PUPILS),
    forts: typed.forts === true,
  };
  const faults = [
    ...elsewhere(typed, what, help, words),
    ...(out === null && svg === null ? [words.say('usage.out-which', { help })] : []),
    ...(out === null || /\.pdf$/i.test(out) ? [] : [words.say('usage.out-no-pdf', { name: out })]),
    ...(sheet === null || options.sheet !== null
      ? []
      : [words.say('usage.sheet-unknown', { name: sheet, known: known.join(', ') })]),
    ...(
      [
        ['sets', MOST_SETS],
        ['pupils', MOST_PUPILS],
      ] as const
    ).flatMap(([name, most]) => {
      const value = textOf(typed[name]);
      if (value === null || wholeIn(value, most) !== null) return [];
      return [words.say('usage.whole-number', { name: `--${name}`, value, most })];
    }),
  ];
  return { options, faults };
}

/** More than a school prints at once; the packing of more would take long. */
const MOST_SETS = 100;
const MOST_PUPILS = 1000;

const textOf = (value: string | boolean | undefined): string | null => (typeof value === 'string' ? value : null);

function wholeIn(value: string | boolean | undefined, most: number): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : Number.NaN;
  return Number.isInteger(number) && number >= 1 && number <= most ? number : null;
}

/** An option that the other things to print have no use for is a slip, and is not passed over. */
function elsewhere(typed: PrintTyped, what: Printed, help: string, words: TerminalWords): readonly string[] {
  return (Object.keys(GOES_WITH) as (keyof typeof GOES_WITH)[]).flatMap((name) =>
    typed[name] === undefined || GOES_WITH[name] === what
      ? []
      : [words.say('usage.option-elsewhere', { name: `--${name}`, what: GOES_WITH[name], help })],
  );
}

const GOES_WITH = {
  sets: 'nets',
  masters: 'nets',
  split: 'nets',
  svg: 'nets',
  sheet: 'sheets',
  'large-print': 'sheets',
  pupils: 'sheets',
  forts: 'ground',
} as const satisfies Partial<Record<PrintOptionName, Printed>>;
