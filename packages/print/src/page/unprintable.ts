// Writing that a sheet cannot hold.

import type { PrintIssue } from '../issue.ts';
import { foreignIn } from '../text/win-ansi.ts';
import type { Page } from './page.ts';

/** One issue for each character of each mark, with its place: ["pages", 2, "marks", 7]. */
export const unprintable = (pages: readonly Page[]): readonly PrintIssue[] =>
  pages.flatMap(({ marks }, page) =>
    marks.flatMap((mark, k) => (mark.kind === 'writing' ? unprintableIn(mark.text, ['pages', page, 'marks', k]) : [])),
  );

export const unprintableIn = (text: string, path: PrintIssue['path']): readonly PrintIssue[] =>
  foreignIn(text).map((character) => ({ code: 'character-unprintable', path, details: { character, text } }));
