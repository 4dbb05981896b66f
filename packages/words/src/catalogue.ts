// The catalogue of one language. English is the pattern: the other languages have the same keys, with the same names
// between braces.

import type { commands } from './en/commands.ts';
import type { own } from './en/own.ts';
import type { results } from './en/results.ts';
import type { stability } from './en/stability.ts';
import type { supply } from './en/supply.ts';
import type { why } from './en/why.ts';
import type { CautionTexts, IssueTexts, NameTables } from './keys.ts';

export type EnglishResults = typeof results;
export type EnglishStability = typeof stability;
export type EnglishCommands = typeof commands;
export type OwnTexts = Readonly<Record<keyof typeof own, string>>;
export type SupplyTexts = Readonly<Record<keyof typeof supply, string>>;
export type WhyTexts = Readonly<Record<keyof typeof why, string>>;
export type ResultTexts = Readonly<Record<keyof EnglishResults, string>>;
export type StabilityTexts = Readonly<Record<keyof EnglishStability, string>>;
export type CommandTexts = Readonly<Record<keyof EnglishCommands, string>>;

export interface Catalogue {
  readonly decimalMark: '.' | ',';
  /** Stands before the last of a list: " and ". */
  readonly and: string;
  /** Stands between the two units of a quotient: "cm³ per cm²". */
  readonly per: string;
  /** "1st", "2nd". */
  readonly ordinal: (place: number) => string;
  readonly names: NameTables;
  readonly issues: IssueTexts;
  readonly results: ResultTexts;
  readonly own: OwnTexts;
  readonly supply: SupplyTexts;
  readonly why: WhyTexts;
  readonly stability: StabilityTexts;
  readonly cautions: CautionTexts;
}
