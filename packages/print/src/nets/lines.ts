// How the lines of a net look. mm.

import type { Path } from '@cairnmark/nets';
import type { Fill, Grey, Stroke } from '../page/page.ts';
import { solidLine } from '../page/shapes.ts';

/** Thick enough to be found by scissors, and for a bad copy. */
const CUT_MM = 0.35;

/** Thinner, and broken: the eye tells them apart without colours. */
const FOLD_MM = 0.25;
const FOLD_DASH_MM = [2, 1.5];

/** A copy makes it lighter still. */
const FOLD_GREY: Grey = 0.35;

/** A tab is no face: light enough for letters and for a bad copy, and it shows which of its sides is blank. */
const TAB_GREY: Grey = 0.93;

export const tabShade = (outline: Path): Fill => ({ kind: 'fill', paths: [outline], grey: TAB_GREY });

export const cutLine = (path: Path): Stroke => solidLine(path, CUT_MM);

export const foldLine = (path: Path): Stroke => ({
  ...solidLine(path, FOLD_MM, FOLD_GREY),
  dashMm: FOLD_DASH_MM,
});
