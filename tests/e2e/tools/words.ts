// The app's own texts, so that a test finds a button by what it is called, whatever that is, in either language.

import { cardWords, planWords, talkWords, traceWords } from '@cairnmark/words';

export const english = cardWords('en').say;
export const spanish = cardWords('es').say;
/** Those of the screens on which a class is planned and run. */
export const englishPlan = planWords('en').say;
export const spanishPlan = planWords('es').say;
/** Those of the door "Trace it". */
export const englishTrace = traceWords('en').say;
/** Those of the graphs and of Fair points. */
export const englishTalk = talkWords('en').say;
