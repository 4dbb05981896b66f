// The catalogue of one language. English is the pattern: the other languages have the same keys, with the same names
// between braces.

import type { commands } from './en/commands.ts';
import type { results } from './en/results.ts';
import type { stability } from './en/stability.ts';
import type { CautionTexts, IssueTexts, NameTables } from './keys.ts';

export type EnglishResults = typeof results;
export type EnglishStability = typeof stability;
export type EnglishCommands = typeof commands;
export type ResultTexts = Readonly<Record<keyof EnglishResults, string>>;
export type StabilityTexts = Readonly<Record<keyof EnglishStability, string>>;
export type CommandTexts = Readonly<Record<keyof EnglishCommands, string>>;

export interface Catalogue {
  readonly decimalMark: '.' | ',';
  /** Stands before the last of a list: " and ". */
  readonly and: string;
  /** "1st", "2nd". */
  readonly ordinal: (place: number) => string;
  readonly names: NameTables;
  readonly issues: IssueTexts;
  readonly results: ResultTexts;
  readonly stability: StabilityTexts;
  readonly commands: CommandTexts;
  readonly cautions: CautionTexts;
}
