// From a photograph of a sheet to its camera. Of a ground sheet: markers are found, the camera is fitted, markers that were missed are looked for
// where they must be, and the camera is fitted anew.

import type { Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { FoundMarkers } from '../find/find-markers.ts';
import { findMarkers } from '../find/find-markers.ts';
import { findSheet } from '../find/find-sheet.ts';
import { lookAgain } from '../find/look-again.ts';
import { markersOf } from '../ground-sheet.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import type { FitOptions, GroundSheet, RoughFit } from './fit-camera.ts';
import { fitCamera, placesOf, roughFit } from './fit-camera.ts';
import { fitPlainSheet } from './fit-plain.ts';
import type { FittedCamera } from './fitted-camera.ts';
import { seenMarkers } from './seen.ts';
import type { Sheet } from './sheet.ts';

/** The camera, or why there is none. */
export function readSheet(photo: Photo, sheet: Sheet, options: FitOptions): Result<FittedCamera, PhotoIssue> {
  if (sheet.kind === 'ground') return fitCamera(findAllMarkers(photo, sheet, options), sheet, options);
  const found = findSheet(photo);
  return found === null
    ? failure([issue('sheet-not-found', 'show-whole-sheet')])
    : fitPlainSheet(found, sheet, options);
}

/** The markers of the sheet that show, those included that are only found by knowing where to look. */
export function findAllMarkers(photo: Photo, sheet: GroundSheet, { focal35Mm }: FitOptions): FoundMarkers {
  let found = findMarkers(photo);
  for (let round = 0; round < ROUNDS; round += 1) {
    const rough = roughFit(found, sheet, focal35Mm, LEAST_TO_LOOK);
    if (!rough.ok) break;
    const more = missing(photo, sheet, found, rough.value);
    if (more.length === 0) break;
    const markers = [...found.markers, ...more].sort((a, b) => a.id - b.id);
    found = { ...found, markers };
  }
  return found;
}

/** Looking again helps once; what is found then may lead to more. */
const ROUNDS = 2;
/** Two markers tell well enough where the others are. */
const LEAST_TO_LOOK = 2;

function missing(photo: Photo, sheet: GroundSheet, found: FoundMarkers, { raw }: RoughFit): FoundMarkers['markers'] {
  const places = placesOf(sheet).map((place) => raw.places.find(({ page }) => page === place.page) ?? place);
  const known = new Set(found.markers.map(({ id }) => id));
  const wanted = places
    .flatMap(({ page }) => markersOf(page))
    .filter(({ id }) => !known.has(id))
    .map(({ id }) => ({ id, corners: NOWHERE, wrongBits: 0, contrast: 0 }));
  return lookAgain(photo, raw.camera, raw.bloomPx, seenMarkers(wanted, places, sheet.printScale));
}

const NOWHERE: FoundMarkers['markers'][number]['corners'] = [
  [0, 0],
  [0, 0],
  [0, 0],
  [0, 0],
];
