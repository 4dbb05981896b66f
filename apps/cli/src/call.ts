// The words of a call, read: which command, which files, which options. Every fault is a sentence.

import { parseArgs } from 'node:util';
import type { Language, TerminalWords } from '@cairnmark/words';
import { LANGUAGES, terminalWords } from '@cairnmark/words';
import type { FairOptionName, FairTyped } from './fair/options.ts';
import { FAIR_OPTIONS } from './fair/options.ts';
import type { PrintOptionName, PrintTyped } from './printing/options.ts';
import { PRINT_CHOICES, PRINT_OPTIONS } from './printing/options.ts';

export const COMMANDS = [
  'score',
  'measure',
  'why',
  'ready',
  'favour',
  'even',
  'best',
  'print',
  'trace',
  'solids',
  'check',
  'help',
] as const;
export type CommandName = (typeof COMMANDS)[number];

export const FORMS = ['table', 'json', 'csv'] as const;
export type Form = (typeof FORMS)[number];

export interface Call {
  readonly command: CommandName;
  /** What stands beside the command: files, names of groups, or for help the command asked about. */
  readonly rest: readonly string[];
  readonly form: Form;
  readonly rows: boolean;
  readonly attempt: string | null;
  /** Pieces to take out, as typed: a number or `all`. */
  readonly without: string | null;
  /** The side to tilt towards, as typed. */
  readonly tilt: string | null;
  readonly challenge: string | null;
  /** How many a build may have, as typed. */
  readonly pieces: string | null;
  readonly language: Language;
  /** The file of taps, as typed. */
  readonly taps: string | null;
  readonly print: PrintTyped;
  readonly fair: FairTyped;
}

export interface Reading {
  readonly words: TerminalWords;
  /** The call, or the sentence that says what was not understood. */
  readonly call: Call | string;
}

type OptionName =
  | 'lang'
  | 'as'
  | 'rows'
  | 'attempt'
  | 'without'
  | 'tilt'
  | 'challenge'
  | 'pieces'
  | 'taps'
  | 'help'
  | PrintOptionName
  | FairOptionName;

const OPTIONS = {
  ...PRINT_OPTIONS,
  ...FAIR_OPTIONS,
  lang: { type: 'string' },
  as: { type: 'string' },
  attempt: { type: 'string' },
  without: { type: 'string' },
  tilt: { type: 'string' },
  challenge: { type: 'string' },
  pieces: { type: 'string' },
  taps: { type: 'string' },
  rows: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const satisfies Record<OptionName, { type: 'string' | 'boolean'; short?: string }>;

/** Options of each command, beside --lang and --help. */
const TAKES: Readonly<Record<CommandName, readonly OptionName[]>> = {
  score: ['as', 'rows'],
  measure: ['attempt', 'without', 'tilt'],
  why: ['challenge'],
  ready: ['pieces', 'rows'],
  favour: ['challenge', 'as', ...namesOf(FAIR_OPTIONS)],
  even: ['challenge', 'as', 'most', 'negative', 'half', 'count', 'counting'],
  print: ['challenge', ...namesOf(PRINT_OPTIONS)],
  trace: ['taps', 'as'],
  best: ['challenge', 'as'],
  solids: [],
  check: [],
  help: [],
};

/** `args` without the program's name. Without a command, help is meant. */
export function readCall(args: readonly string[]): Reading {
  const { tokens, values, positionals } = parseArgs({
    args: [...args],
    options: OPTIONS,
    strict: false,
    tokens: true,
    allowPositionals: true,
  });
  const language = LANGUAGES.find((one) => one === values.lang) ?? 'en';
  const words = terminalWords(language);
  const [name = 'help', ...rest] = positionals;
  const command = COMMANDS.find((candidate) => candidate === name);
  if (command === undefined) {
    return { words, call: words.say('usage.command-unknown', { name, known: COMMANDS.join(', ') }) };
  }
  const faults = tokens.flatMap((token) => (token.kind === 'option' ? optionFault(token, command, words) : []));
  const [fault] = faults;
  if (fault !== undefined) return { words, call: fault };
  if (values.help === true) return { words, call: { ...PLAIN, command: 'help', rest: [command], language } };
  const form = FORMS.find((candidate) => candidate === values.as) ?? 'table';
  const texts = {
    attempt: textOf(values.attempt),
    without: textOf(values.without),
    tilt: textOf(values.tilt),
    challenge: textOf(values.challenge),
    pieces: textOf(values.pieces),
    taps: textOf(values.taps),
  };
  return {
    words,
    call: {
      command,
      rest,
      form,
      rows: values.rows === true,
      ...texts,
      language,
      print: typedOf(PRINT_OPTIONS, values),
      fair: typedOf(FAIR_OPTIONS, values),
    },
  };
}

/** What was typed behind the options of a table. */
const typedOf = <Name extends string>(
  table: Readonly<Record<Name, unknown>>,
  values: Readonly<Partial<Record<Name, string | boolean>>>,
): Readonly<Partial<Record<Name, string | boolean>>> =>
  Object.fromEntries(
    namesOf(table).flatMap((name) => (values[name] === undefined ? [] : [[name, values[name]]])),
  ) as Partial<Record<Name, string | boolean>>;

function namesOf<Name extends string>(table: Readonly<Record<Name, unknown>>): readonly Name[] {
  return Object.keys(table) as Name[];
}

/** The call that tells more about a command. */
export const helpAbout = (command: CommandName): string =>
  command === 'help' ? 'cairnmark help' : `cairnmark help ${command}`;

const textOf = (value: string | boolean | undefined): string | null => (typeof value === 'string' ? value : null);

const PLAIN = {
  form: 'table',
  rows: false,
  attempt: null,
  without: null,
  tilt: null,
  challenge: null,
  pieces: null,
  taps: null,
  print: {},
  fair: {},
} as const;

interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value?: string | undefined;
}

function optionFault(
  { name, rawName, value }: OptionToken,
  command: CommandName,
  words: TerminalWords,
): readonly string[] {
  const option = (['lang', 'help', ...TAKES[command]] as const).find((known) => known === name);
  if (option === undefined) return [words.say('usage.option-unknown', { name: rawName, help: helpAbout(command) })];
  if (OPTIONS[option].type === 'boolean') {
    return value === undefined ? [] : [words.say('usage.option-no-value', { name: rawName, help: helpAbout(command) })];
  }
  if (value === undefined || value.startsWith('-')) {
    return [words.say('usage.option-alone', { name: rawName, help: helpAbout(command) })];
  }
  const choices = CHOICES[option];
  if (choices === undefined || choices.includes(value)) return [];
  return [words.say('usage.option-value', { name: rawName, value, known: choices.join(', ') })];
}

const CHOICES: Readonly<Partial<Record<OptionName, readonly string[]>>> = {
  lang: LANGUAGES,
  as: FORMS,
  ...PRINT_CHOICES,
};
