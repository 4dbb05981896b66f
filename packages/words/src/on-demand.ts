// One language at a time, loaded when it is asked for: a device reads one language, and its first screen no words about builds.

import type { CardTexts, CardWords } from './cards.ts';
import type { Catalogue } from './catalogue.ts';
import type { Language } from './language.ts';
import type { PlanTexts, PlanWords } from './plan.ts';
import type { PrintCatalogue, PrintWords } from './print.ts';
import type { ScreenTexts, ScreenWords } from './screens.ts';
import type { TalkTexts, TalkWords } from './talk.ts';
import { textWords } from './text-words.ts';
import type { TraceCatalogue, TraceWords } from './trace.ts';
import type { Words } from './words.ts';

type Load<T> = Readonly<Record<Language, () => Promise<T>>>;

const CATALOGUES: Load<Catalogue> = {
  en: async () => (await import('./en/index.ts')).english,
  es: async () => (await import('./es/index.ts')).spanish,
};

const SCREENS: Load<ScreenTexts> = {
  en: async () => (await import('./en/screens/index.ts')).screens,
  es: async () => (await import('./es/screens/index.ts')).screens,
};

const CARDS: Load<CardTexts> = {
  en: async () => (await import('./en/screens/cards.ts')).cards,
  es: async () => (await import('./es/screens/cards.ts')).cards,
};

const PLANS: Load<PlanTexts> = {
  en: async () => (await import('./en/plan/index.ts')).plan,
  es: async () => (await import('./es/plan/index.ts')).plan,
};

const PRINTED: Load<PrintCatalogue> = {
  en: async () => (await import('./en/print/index.ts')).printed,
  es: async () => (await import('./es/print/index.ts')).printed,
};

const TALKS: Load<TalkTexts> = {
  en: async () => (await import('./en/talk/index.ts')).talk,
  es: async () => (await import('./es/talk/index.ts')).talk,
};

const TRACES: Load<TraceCatalogue> = {
  en: async () => (await import('./en/trace.ts')).trace,
  es: async () => (await import('./es/trace.ts')).trace,
};

export async function loadWords(language: Language): Promise<Words> {
  const [catalogue, { wordsIn }] = await Promise.all([CATALOGUES[language](), import('./words.ts')]);
  return wordsIn(catalogue);
}

export const loadScreenWords = async (language: Language): Promise<ScreenWords> =>
  textWords(language, await SCREENS[language]());

export const loadPlanWords = async (language: Language): Promise<PlanWords> =>
  textWords(language, await PLANS[language]());

export const loadTalkWords = async (language: Language): Promise<TalkWords> =>
  textWords(language, await TALKS[language]());

export async function loadCardWords(language: Language): Promise<CardWords> {
  const [screens, cards] = await Promise.all([SCREENS[language](), CARDS[language]()]);
  return textWords(language, { ...screens, ...cards });
}

export async function loadPrintWords(language: Language): Promise<PrintWords> {
  const [printed, { printWordsIn }] = await Promise.all([PRINTED[language](), import('./print.ts')]);
  return printWordsIn(language, printed);
}

export async function loadTraceWords(language: Language): Promise<TraceWords> {
  const [catalogue, { traceWordsIn }] = await Promise.all([TRACES[language](), import('./trace.ts')]);
  return traceWordsIn(language, catalogue);
}
