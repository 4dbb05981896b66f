// What can be wrong with a photograph or with taps on it, as data. The sentences stand in `words`.

import type { Issue } from '@cairnmark/geometry';

export type PhotoIssueCode =
  /** The longest side of the picture is below what the detector needs. widthPx, heightPx, leastPx. */
  | 'photo-too-small'
  /** No marker at all, and no plain sheet where that was asked for. */
  | 'sheet-not-found'
  /** found, least: markers that show whole and agree with each other. */
  | 'too-few-markers'
  /** Markers or edges do not lie on one flat sheet. rmsPx, mostPx. */
  | 'sheet-not-flat'
  /** What shows is not of the size or kind that was stated: the lens would have to be another. focalPx, expectedPx. */
  | 'not-this-sheet'
  /** No focal length in the file, and the photo does not tell it well enough. sigmaShare, mostShare, tiltRad. */
  | 'focal-not-known'
  /** The sheet's own edges do not show on two sides that face each other. */
  | 'sheet-edges-not-found'
  /** The sheet was printed smaller or larger than it should be. scale, sigma: measured over nominal. */
  | 'print-scale-off'
  /** given, least. */
  | 'taps-too-few'
  /** Taps lie so near to each other that they tell nothing. distanceMm, leastMm. */
  | 'taps-too-near'
  /** Taps do not fit the listed sizes. offMm, mostMm. */
  | 'taps-do-not-fit'
  /** A tap looks past the table: no point of the plane shows there. */
  | 'tap-not-on-plane'
  /** The piece, lying this way, has no outline that can be tapped. */
  | 'nothing-to-tap'
  /** Sides of a traced outline cross each other. first, second. */
  | 'outline-crosses-itself'
  | 'taps-in-a-line'
  /** The height at which the piece stands cannot be told from the pieces below it. */
  | 'level-not-clear'
  /** The line of sight to the top is too near to upright to tell a height. tiltRad, leastRad. */
  | 'view-too-steep';

/** What a person can do about it. */
export type Mend =
  | 'take-larger-photo'
  | 'show-whole-sheet'
  | 'lay-sheet-flat'
  | 'choose-other-sheet'
  | 'photograph-tilted'
  | 'photograph-from-side'
  | 'print-at-full-size'
  | 'tap-again'
  | 'choose-other-piece'
  | 'trace-freely'
  | 'say-what-it-stands-on';

export interface PhotoIssue extends Issue<PhotoIssueCode> {
  readonly mend: Mend;
}

export const issue = (
  code: PhotoIssueCode,
  mend: Mend,
  path: PhotoIssue['path'] = [],
  details: PhotoIssue['details'] = {},
): PhotoIssue => ({ code, mend, path, details });
