// The app's own texts, so that a test finds a button by what it is called, whatever that is, in either language.

import { planWords, screenWords } from '@cairnmark/words';

export const english = screenWords('en').say;
export const spanish = screenWords('es').say;
/** Those of the screens on which a class is planned and run. */
export const englishPlan = planWords('en').say;
export const spanishPlan = planWords('es').say;
