// The options about the points lab: as they were typed, and what is wrong with them.

import type { CountingConvention } from '@cairnmark/geometry';
import type { PointStep } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';

export const FAIR_OPTIONS = {
  solid: { type: 'string' },
  lead: { type: 'string' },
  most: { type: 'string' },
  rules: { type: 'string' },
  negative: { type: 'boolean' },
  half: { type: 'boolean' },
  count: { type: 'string' },
  counting: { type: 'string' },
} as const;

export type FairOptionName = keyof typeof FAIR_OPTIONS;

/** What was typed behind an option; true for one that takes no value. */
export type FairTyped = Readonly<Partial<Record<FairOptionName, string | boolean>>>;

export interface FairOptions {
  /** As typed; null: each of them. */
  readonly solid: string | null;
  readonly lead: number;
  readonly most: number;
  readonly rules: number;
  readonly negative: boolean;
  readonly step: PointStep;
  /** As typed; null: what is counted on a piece. */
  readonly count: readonly string[] | null;
  /** null: as the challenge says. */
  readonly counting: CountingConvention | null;
}

/** The options, or a sentence for each that cannot be followed. */
export function readFairOptions(
  typed: FairTyped,
  words: TerminalWords,
): { readonly options: FairOptions; readonly faults: readonly string[] } {
  const step = typed.half === true ? 0.5 : 1;
  const counting = textOf(typed.counting);
  const known = counting === null ? null : (COUNTING[counting.toUpperCase()] ?? null);
  const options: FairOptions = {
    solid: textOf(typed.solid),
    lead: numberIn(typed.lead, step) ?? 1,
    most: numberIn(typed.most, step) ?? MOST_USUAL,
    rules: numberIn(typed.rules, 1) ?? RULES_USUAL,
    negative: typed.negative === true,
    step,
    count: textOf(typed.count)?.split(',') ?? null,
    counting: known,
  };
  const numbers = [
    ['lead', step],
    ['most', step],
    ['rules', 1],
  ] as const;
  const faults = [
    ...numbers.flatMap(([name, least]) => {
      const value = textOf(typed[name]);
      if (value === null || numberIn(value, least) !== null) return [];
      const span = { step: words.number(least), most: NUMBER_MOST };
      return [words.say('usage.points-value', { name: `--${name}`, value, ...span })];
    }),
    ...(counting === null || known !== null ? [] : [words.say('usage.counting-unknown', { value: counting })]),
  ];
  return { options, faults };
}

const MOST_USUAL = 10;
const RULES_USUAL = 3;
/** Rates beyond it are no school's, and the search would take long. */
const NUMBER_MOST = 100;

const COUNTING: Readonly<Record<string, CountingConvention>> = {
  A: 'flat-only',
  B: 'flat-and-curved-apart',
  C: 'all-surfaces',
};

const textOf = (value: string | boolean | undefined): string | null => (typeof value === 'string' ? value : null);

/** A multiple of the step, from the step on. */
function numberIn(value: string | boolean | undefined, step: number): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : Number.NaN;
  return number >= step && number <= NUMBER_MOST && Number.isInteger(number / step) ? number : null;
}
