// Texts of the screens on which a class is planned and run. Apart from those of the pupils' screens, which are on their way
// to every device: these come when one of the screens is opened.

import type { plan } from './en/plan/index.ts';
import type { TextsOf, TextWords } from './text-words.ts';

export type EnglishPlan = typeof plan;
export type PlanKey = keyof EnglishPlan;
export type PlanTexts = TextsOf<EnglishPlan>;
export type PlanWords = TextWords<EnglishPlan>;
