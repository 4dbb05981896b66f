// Why a file was not opened, in sentences.

import type { FileIssue } from '@cairnmark/formats';
import type { Language } from '@cairnmark/words';
import { loadScreenWords, loadWords } from '@cairnmark/words';
import { FAULTS_TOLD_MOST } from '../../parts/faults-told.ts';

export interface Refusal {
  readonly title: string;
  readonly sentences: readonly string[];
}

export async function refusalOf(title: string, issues: readonly FileIssue[], language: Language): Promise<Refusal> {
  const [words, screens] = await Promise.all([loadWords(language), loadScreenWords(language)]);
  const sentences = issues.slice(0, FAULTS_TOLD_MOST).map(words.issue);
  const more = issues.length - sentences.length;
  return {
    title,
    sentences: more > 0 ? [...sentences, screens.say('start.file-more', { count: more })] : sentences,
  };
}
