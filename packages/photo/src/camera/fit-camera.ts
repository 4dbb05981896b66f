// From the markers of a photograph to its camera, or to the reason why there is none.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { FoundMarkers } from '../find/find-markers.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import {
  AGREEING_SHARE,
  LEAST_LONG_SIDE_PX,
  LEAST_MARKERS,
  MOST_FOCAL_SIGMA_SHARE,
  MOST_FOCAL_SIGMAS,
  MOST_RMS_SHARE,
} from '../tolerance.ts';
import { agreeing } from './agreeing.ts';
import { tiltOf } from './camera.ts';
import { fitGround } from './fit-ground.ts';
import type { FittedCamera, RawFit } from './fitted-camera.ts';
import { focalPrior } from './focal-prior.ts';
import { CAMERA_UNKNOWNS } from './model.ts';
import { seenMarkers } from './seen.ts';
import type { PagePlace, Sheet } from './sheet.ts';
import { pagesOf } from './sheet.ts';

export interface FitOptions {
  /** The 35 mm equivalent in the file; null where it has none, as after most ways of sending a photo. */
  readonly focal35Mm: number | null;
}

export type GroundSheet = Extract<Sheet, { kind: 'ground' }>;

/** The camera of a photo of a ground sheet whose markers were found. */
export function fitCamera(
  found: FoundMarkers,
  sheet: GroundSheet,
  { focal35Mm }: FitOptions,
): Result<FittedCamera, PhotoIssue> {
  const rough = roughFit(found, sheet, focal35Mm, LEAST_MARKERS);
  if (!rough.ok) return rough;
  const { raw, used } = rough.value;
  const strays = found.markers.map(({ id }) => id).filter((id) => !used.includes(id));
  return judged({ ...fitted(raw), markers: used, strays }, raw, focal35Mm, Math.max(found.widthPx, found.heightPx));
}

export interface RoughFit {
  readonly raw: RawFit;
  /** Ids of the markers that it stands on. */
  readonly used: readonly number[];
}

/** The same from as few markers as stated, without any judgement of how good it is. */
export function roughFit(
  { widthPx, heightPx, markers }: FoundMarkers,
  sheet: GroundSheet,
  focal35Mm: number | null,
  least: number,
): Result<RoughFit, PhotoIssue> {
  const longPx = Math.max(widthPx, heightPx);
  if (longPx < LEAST_LONG_SIDE_PX) {
    return failure([
      issue('photo-too-small', 'take-larger-photo', [], { widthPx, heightPx, leastPx: LEAST_LONG_SIDE_PX }),
    ]);
  }
  if (markers.length === 0) return failure([issue('sheet-not-found', 'show-whole-sheet')]);
  const places = placesOf(sheet);
  const seen = agreeing(seenMarkers(markers, places, sheet.printScale), AGREEING_SHARE * longPx);
  if (seen.length < least)
    return failure([issue('too-few-markers', 'show-whole-sheet', [], { found: seen.length, least })]);
  const { fixed, free } = split(places, sheet, (page) => seen.filter((one) => one.page === page).length);
  const raw = fitGround({ widthPx, heightPx, focal: focalPrior(widthPx, heightPx, focal35Mm), seen, fixed, free });
  if (raw === null) return failure([issue('sheet-not-flat', 'lay-sheet-flat')]);
  const used = seen.map(({ id }) => id).filter((id) => !raw.strays.includes(id));
  if (used.length < least)
    return failure([issue('too-few-markers', 'show-whole-sheet', [], { found: used.length, least })]);
  return success({ raw, used });
}

/** Where the pages lie, as far as that is known before the photo is looked at. */
export const placesOf = ({ paper, pages, places }: GroundSheet): readonly PagePlace[] =>
  pagesOf(paper, pages).map((place) => places?.find(({ page }) => page === place.page) ?? place);

/** The page with most markers stays where it should lie, the others that show are looked for. What is known from before stays. */
function split(
  places: readonly PagePlace[],
  { places: known }: GroundSheet,
  markersOn: (page: number) => number,
): { fixed: readonly PagePlace[]; free: readonly PagePlace[] } {
  const isKnown = ({ page }: PagePlace): boolean => known?.some((one) => one.page === page) ?? false;
  const shown = places.filter(({ page }) => markersOn(page) > 0);
  const fixed = shown.filter(isKnown);
  const most = Math.max(...shown.map(({ page }) => markersOn(page)));
  const anchor = fixed.length > 0 ? fixed : shown.filter(({ page }) => markersOn(page) === most).slice(0, 1);
  return { fixed: anchor, free: shown.filter((place) => !anchor.includes(place)) };
}

/** The fit as others use it, less the judgement. */
export function fitted(raw: RawFit): Omit<FittedCamera, 'markers' | 'strays'> {
  const covariance = new Float64Array(CAMERA_UNKNOWNS ** 2);
  for (let row = 0; row < CAMERA_UNKNOWNS; row += 1) {
    for (let column = 0; column < CAMERA_UNKNOWNS; column += 1) {
      covariance[row * CAMERA_UNKNOWNS + column] = raw.covariance[row * raw.size + column] ?? 0;
    }
  }
  return {
    ...raw.camera,
    bloomPx: raw.bloomPx,
    covariance,
    rmsPx: Math.sqrt(raw.offPx.reduce((sum, off) => sum + off * off, 0) / raw.offPx.length),
    focalSigmaShare: Math.sqrt(covariance[6 * CAMERA_UNKNOWNS + 6] ?? 0),
    tiltRad: tiltOf(raw.camera),
    places: raw.places,
  };
}

/** Refuses a fit that leaves too much over, and a focal length that neither file nor photo tells. */
export function judged(
  camera: FittedCamera,
  raw: RawFit,
  focal35Mm: number | null,
  longPx: number,
): Result<FittedCamera, PhotoIssue> {
  const mostPx = MOST_RMS_SHARE * longPx;
  if (camera.rmsPx > mostPx) {
    return failure([issue('sheet-not-flat', 'lay-sheet-flat', [], { rmsPx: camera.rmsPx, mostPx })]);
  }
  const expected = focalPrior(camera.widthPx, camera.heightPx, focal35Mm);
  if (Math.abs(Math.log(camera.focalPx / expected.focalPx)) > MOST_FOCAL_SIGMAS * expected.sigmaShare) {
    const details = { focalPx: camera.focalPx, expectedPx: expected.focalPx };
    return failure([issue('not-this-sheet', 'choose-other-sheet', [], details)]);
  }
  if (focal35Mm === null && camera.focalSigmaShare > MOST_FOCAL_SIGMA_SHARE) {
    const details = {
      sigmaShare: camera.focalSigmaShare,
      mostShare: MOST_FOCAL_SIGMA_SHARE,
      tiltRad: tiltOf(raw.camera),
    };
    return failure([issue('focal-not-known', 'photograph-tilted', [], details)]);
  }
  return success(camera);
}
