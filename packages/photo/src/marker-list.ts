// All markers of all pages, in the order of their ids.

import type { Marker } from './ground-sheet.ts';
import { FORT_PAGES, markersOf } from './ground-sheet.ts';

export const allMarkers = (): readonly Marker[] => ALL;

/** Eight a page: `markerOf(19)` lies on page 2. */
export const markerOf = (id: number): Marker | undefined => ALL[id];

export const pageOf = (id: number): number => Math.floor((id * FORT_PAGES) / ALL.length);

const ALL: readonly Marker[] = Array.from({ length: FORT_PAGES }, (_, page) => markersOf(page)).flat();
