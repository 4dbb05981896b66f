// The app's own texts, so that a test finds a button by what it is called, whatever that is, in either language.

import { screenWords } from '@cairnmark/words';

export const english = screenWords('en').say;
export const spanish = screenWords('es').say;
