// All languages together, for programs that have every text at hand: the terminal and the tests.

import type { CardTexts, CardWords } from './cards.ts';
import type { Catalogue, CommandTexts, EnglishCommands } from './catalogue.ts';
import { commands as enCommands } from './en/commands.ts';
import { english } from './en/index.ts';
import { plan as enPlan } from './en/plan/index.ts';
import { printed as enPrinted } from './en/print/index.ts';
import { cards as enCards } from './en/screens/cards.ts';
import { screens as enScreens } from './en/screens/index.ts';
import { talk as enTalk } from './en/talk/index.ts';
import { trace as enTrace } from './en/trace.ts';
import { commands as esCommands } from './es/commands.ts';
import { spanish } from './es/index.ts';
import { plan as esPlan } from './es/plan/index.ts';
import { printed as esPrinted } from './es/print/index.ts';
import { cards as esCards } from './es/screens/cards.ts';
import { screens as esScreens } from './es/screens/index.ts';
import { talk as esTalk } from './es/talk/index.ts';
import { trace as esTrace } from './es/trace.ts';
import type { Language } from './language.ts';
import type { PlanTexts, PlanWords } from './plan.ts';
import type { PrintCatalogue, PrintWords } from './print.ts';
import { printWordsIn } from './print.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';
import type { ScreenTexts, ScreenWords } from './screens.ts';
import type { TalkTexts, TalkWords } from './talk.ts';
import { textWords } from './text-words.ts';
import type { TraceCatalogue, TraceWords } from './trace.ts';
import { traceWordsIn } from './trace.ts';
import type { Words } from './words.ts';
import { wordsIn } from './words.ts';

export interface TerminalWords extends Words {
  /** A text of the terminal. */
  say<K extends keyof EnglishCommands>(key: K, ...values: Values<EnglishCommands[K]>): string;
}

const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en: english, es: spanish };
const COMMANDS: Readonly<Record<Language, CommandTexts>> = { en: enCommands, es: esCommands };
const CARDS: Readonly<Record<Language, CardTexts>> = { en: enCards, es: esCards };
const PLANS: Readonly<Record<Language, PlanTexts>> = { en: enPlan, es: esPlan };
const PRINTED: Readonly<Record<Language, PrintCatalogue>> = { en: enPrinted, es: esPrinted };
const SCREENS: Readonly<Record<Language, ScreenTexts>> = { en: enScreens, es: esScreens };
const TALKS: Readonly<Record<Language, TalkTexts>> = { en: enTalk, es: esTalk };
const TRACES: Readonly<Record<Language, TraceCatalogue>> = { en: enTrace, es: esTrace };

export const wordsFor = (language: Language): Words => wordsIn(CATALOGUES[language]);

export const terminalWords = (language: Language): TerminalWords => ({
  ...wordsFor(language),
  say: (key, ...[values = {}]) => fill(COMMANDS[language][key], values),
});

export const screenWords = (language: Language): ScreenWords => textWords(language, SCREENS[language]);

/** Those with the words of the Score card and the Board. */
export const cardWords = (language: Language): CardWords =>
  textWords(language, { ...SCREENS[language], ...CARDS[language] });

export const planWords = (language: Language): PlanWords => textWords(language, PLANS[language]);

export const talkWords = (language: Language): TalkWords => textWords(language, TALKS[language]);

export const printWords = (language: Language): PrintWords => printWordsIn(language, PRINTED[language]);

export const traceWords = (language: Language): TraceWords => traceWordsIn(language, TRACES[language]);
