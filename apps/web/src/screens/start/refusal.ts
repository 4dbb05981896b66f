// Why a file was not opened, in sentences.

import type { FileIssue } from '@cairnmark/formats';
import type { Language } from '@cairnmark/words';
import { screenWords, wordsFor } from '@cairnmark/words';

export interface Refusal {
  readonly title: string;
  readonly sentences: readonly string[];
}

/** Faults told at once: nobody reads further. */
const TOLD_MOST = 5;

export function refusalOf(title: string, issues: readonly FileIssue[], language: Language): Refusal {
  const words = wordsFor(language);
  const sentences = issues.slice(0, TOLD_MOST).map(words.issue);
  const more = issues.length - sentences.length;
  return {
    title,
    sentences: more > 0 ? [...sentences, screenWords(language).say('start.file-more', { count: more })] : sentences,
  };
}
