// The ground sheet on paper: what photographs are measured by. It has no foot, for its markers reach almost to the edge; two
// pairs of ticks between them tell whether it was printed to scale. mm; within the page the origin is its middle.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { FORT_PAGES, markersOf } from '@cairnmark/photo';
import type { PrintWords } from '@cairnmark/words';
import type { PrintIssue } from '../issue.ts';
import type { Page } from '../page/page.ts';
import type { Paper, PaperSize } from '../page/paper.ts';
import { extentOf } from '../page/paper.ts';
import { shifted } from '../page/shapes.ts';
import { labelOf } from './label.ts';
import { markerMark } from './marker.ts';
import { ticks } from './ticks.ts';

/** One page for towers, or four that are laid two by two, for forts. */
export type GroundSheet = 'one-page' | 'four-pages';

export function groundPages(
  sheet: GroundSheet,
  size: PaperSize,
  words: PrintWords,
): Result<readonly Page[], PrintIssue> {
  const paper: Paper = { size, orientation: 'landscape' };
  const { widthMm, heightMm } = extentOf(paper);
  const middle: Vec2 = [widthMm / 2, heightMm / 2];
  const issues: PrintIssue[] = [];
  const pages = Array.from({ length: sheet === 'one-page' ? 1 : FORT_PAGES }, (_, page): Page => {
    const marks = [
      ...markersOf(page).map(markerMark),
      ...ticks(words),
      ...labelOf(sheet === 'one-page' ? null : page, words, (issue) => issues.push(issue)),
    ];
    return { paper, marks: marks.map((mark) => shifted(mark, middle)) };
  });
  return issues.length > 0 ? failure(issues) : success(pages);
}
