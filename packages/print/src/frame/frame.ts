// What every printed page has around its content: margins, and a foot with the name of the sheet, which page of it this is,
// and two bars by which anybody can check that it was printed to scale. mm, in the frame of the page (page.ts).

import type { Result, Vec2 } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { PrintWords } from '@cairnmark/words';
import type { PrintIssue } from '../issue.ts';
import type { Mark, Page } from '../page/page.ts';
import type { Paper } from '../page/paper.ts';
import { extentOf } from '../page/paper.ts';
import { unprintableIn } from '../page/unprintable.ts';
import { footOf } from './foot.ts';

/** Content of one or more pages under one name. */
export interface Sheet {
  readonly name: string;
  readonly paper: Paper;
  /** The marks of each page, within the usable area. */
  readonly pages: readonly (readonly Mark[])[];
}

/** Where content may stand: its lower left corner, and how large it is. */
export interface Area {
  readonly cornerMm: Vec2;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** mm. Usual printers reach to 4 or 5 mm from the edge (common practice, no source). */
export const MARGIN_MM = 8;

/** mm. Height of the foot, above the lower margin. */
export const FOOT_MM = 14;

/** A4 upright: 194 x 267 mm. Letter upright: 199.9 x 249.4 mm. */
export function usableArea(paper: Paper): Area {
  const { widthMm, heightMm } = extentOf(paper);
  return {
    cornerMm: [MARGIN_MM, MARGIN_MM + FOOT_MM],
    widthMm: widthMm - 2 * MARGIN_MM,
    heightMm: heightMm - 2 * MARGIN_MM - FOOT_MM,
  };
}

/**
 * The pages of a sheet with their foot. Refused at ["name"] where the name does not fit into the foot, or has a character
 * that cannot be printed.
 */
export const framed = ({ name, paper, pages }: Sheet, words: PrintWords): Result<readonly Page[], PrintIssue> =>
  framedPages(
    paper,
    pages.map((marks) => ({ name, marks })),
    words,
  );

/** What stands on a page, and its name at the foot. */
interface NamedPage {
  readonly name: string;
  readonly marks: readonly Mark[];
}

/** The same for pages that have a name each, and are counted as one sheet. */
export function framedPages(
  paper: Paper,
  pages: readonly NamedPage[],
  words: PrintWords,
): Result<readonly Page[], PrintIssue> {
  const foreign = [...new Set(pages.map(({ name }) => name))].flatMap((name) => unprintableIn(name, ['name']));
  if (foreign.length > 0) return failure(foreign);
  const feet = pages.map(({ name }, k) => {
    const page = words.say('print.page', { page: k + 1, pages: pages.length });
    return footOf(name, page, words, { ...usableArea(paper), cornerMm: [MARGIN_MM, MARGIN_MM] });
  });
  const refused = feet.find((foot) => !foot.ok);
  if (refused !== undefined && !refused.ok) return failure(refused.issues);
  return success(
    pages.map(({ marks }, k) => {
      const foot = feet[k];
      return { paper, marks: foot?.ok ? [...marks, ...foot.value] : marks };
    }),
  );
}
