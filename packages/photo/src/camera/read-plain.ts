// A plain sheet in a photograph, and what its four edges leave open: which way round it lies, and, seen from low down, which paper it is.

import type { Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import { findSheet } from '../find/find-sheet.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { OTHER_PAPER_RMS_SHARE } from '../tolerance.ts';
import type { FitOptions } from './fit-camera.ts';
import type { PlainSheet } from './fit-plain.ts';
import { fitPlainSheet } from './fit-plain.ts';
import type { FittedCamera } from './fitted-camera.ts';

export interface PlainReading {
  readonly camera: Result<FittedCamera, PhotoIssue>;
  /** The camera if the sheet was seen from its other long side; null where there is none. */
  readonly halfTurned: FittedCamera | null;
  /** Told when the edges fit the other paper better: lengths would be off by some hundredths. */
  readonly warning: PhotoIssue | null;
}

export function readPlainSheet(photo: Photo, sheet: PlainSheet, options: FitOptions): PlainReading {
  const found = findSheet(photo);
  if (found === null) {
    return { camera: failure([issue('sheet-not-found', 'show-whole-sheet')]), halfTurned: null, warning: null };
  }
  const camera = fitPlainSheet(found, sheet, options);
  if (!camera.ok) return { camera, halfTurned: null, warning: null };
  const turned = fitPlainSheet(found, { ...sheet, halfTurned: !sheet.halfTurned }, options);
  const other = fitPlainSheet(found, { ...sheet, paper: sheet.paper === 'a4' ? 'letter' : 'a4' }, options);
  const isOther = other.ok && other.value.rmsPx < OTHER_PAPER_RMS_SHARE * camera.value.rmsPx;
  return {
    camera,
    halfTurned: turned.ok ? turned.value : null,
    warning: isOther ? issue('not-this-sheet', 'choose-other-sheet') : null,
  };
}
