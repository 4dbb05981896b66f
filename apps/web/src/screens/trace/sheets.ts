// The sheets that can lie under a build, as the photo package knows them.

import type { GroundSheet, PagePlace } from '@cairnmark/photo';
import { markersOf, pagesOf } from '@cairnmark/photo';
import type { SheetChoice, Tracing } from './tracing.ts';
import { measured } from './tracing.ts';

/** For the photo from the side the pages lie where the one from above has found them. */
export function sheetFor(tracing: Tracing, places?: readonly PagePlace[]): GroundSheet {
  const pages = tracing.sheet === 'fort' ? 4 : 1;
  // On one page the markers of both papers lie alike.
  return { kind: 'ground', paper: 'a4', pages, printScale: 1, ...(places === undefined ? {} : { places }) };
}

export const placesFound = (tracing: Tracing): readonly PagePlace[] | undefined =>
  measured(tracing, 'above')?.camera.places;

/** How many markers there are on the sheet; 0: a plain one. */
export function markersOn(sheet: SheetChoice): number {
  if (sheet === 'a4' || sheet === 'letter') return 0;
  return pagesOf('a4', sheet === 'fort' ? 4 : 1).reduce((sum, { page }) => sum + markersOf(page).length, 0);
}
