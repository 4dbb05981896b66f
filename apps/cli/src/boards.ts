// The board of each challenge, with what is needed to put it into words.

import type { Challenge, ClassRecord, ClassScore, Report } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import type { ClassWords, Reader, TerminalWords } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';

export interface Board {
  readonly challenge: Challenge;
  readonly reader: Reader;
  readonly words: ClassWords;
  /** Every attempt at the challenge. */
  readonly reports: readonly Report[];
  /** In the order of the places. */
  readonly lines: readonly BoardLine[];
}

export interface BoardLine {
  readonly standing: Standing;
  /** The report that counts, or null where none does. */
  readonly report: Report | null;
}

export function boardsOf(
  { challenges, groups }: ClassRecord,
  score: ClassScore,
  words: TerminalWords,
): readonly Board[] {
  return challenges.map((challenge) => {
    const reader = readerOf(challenge, groups);
    const reports = score.reports.get(challenge.id) ?? [];
    const counting = score.counting.get(challenge.id);
    const standings = score.standings.get(challenge.id) ?? [];
    const lines = standings.map((standing) => ({ standing, report: counting?.get(standing.group) ?? null }));
    return { challenge, reader, words: words.inClass(reader), reports, lines };
  });
}

/** The error of a fact of the build, in its unit; 0 for points and for what is not there. */
export const toleranceOf = (report: Report | null, fact: string): number =>
  report?.facts.find(({ id }) => id === fact)?.tolerance ?? 0;
