// The sheets that can lie under a build, as the photo package knows them.

import type { PagePlace, Sheet } from '@cairnmark/photo';
import { markersOf, pagesOf } from '@cairnmark/photo';
import type { SheetChoice, Tracing } from './tracing.ts';
import { measured } from './tracing.ts';

/** `places`: for the photo from the side the pages lie where the one from above has found them. */
export function sheetFor({ what, paper }: SheetChoice, places?: readonly PagePlace[]): Sheet {
  if (what === 'plain') return { kind: 'plain', paper, halfTurned: false };
  return { kind: 'ground', paper, pages: pagesOn(what), printScale: 1, ...(places === undefined ? {} : { places }) };
}

export const placesFound = (tracing: Tracing): readonly PagePlace[] | undefined =>
  measured(tracing, 'above')?.camera.places;

/** How many markers there are on the sheet; 0: a plain one. */
export function markersOn({ what, paper }: SheetChoice): number {
  if (what === 'plain') return 0;
  return pagesOf(paper, pagesOn(what)).reduce((sum, { page }) => sum + markersOf(page).length, 0);
}

const pagesOn = (what: 'ground' | 'fort'): 1 | 4 => (what === 'fort' ? 4 : 1);
