// Texts of the screens on which a class is planned and run. Apart from those of the pupils' screens, which are on their way
// to every device: these come when one of the screens is opened.

import type { plan } from './en/plan/index.ts';
import type { Language } from './language.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';

export type EnglishPlan = typeof plan;
export type PlanKey = keyof EnglishPlan;
export type PlanTexts = Readonly<Record<PlanKey, string>>;

export interface PlanWords {
  readonly language: Language;
  /** A text of these screens. */
  say<K extends PlanKey>(key: K, ...values: Values<EnglishPlan[K]>): string;
}

export const planWordsIn = (language: Language, texts: PlanTexts): PlanWords => ({
  language,
  say: (key, ...[values = {}]) => fill(texts[key], values),
});
