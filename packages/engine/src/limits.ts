// How large the numbers of a challenge and an attempt may be. Within these limits every sum of points stays finite and is
// added up without loss; a larger number is a slip of the keyboard.

import { FURTHEST_MM } from '@cairnmark/geometry';

/** mm. As far out as a piece may lie, and as high: taller than any tower in a gymnasium. */
export const LENGTH_MM_MOST = FURTHEST_MM;
/** A cube of ten metres in mm3: no measure of a build is larger. */
export const VALUE_MOST = LENGTH_MM_MOST ** 3;
/** Points, either way, and the weight of a challenge in the day: seven figures still fit the board. */
export const POINTS_MOST = 1_000_000;
/** mm. An error of a reading beyond this is no reading. */
export const MEASURING_ERROR_MM_MOST = 100;
/** mm. A gap allowance beyond a finger's width would close real gates. */
export const GAP_ALLOWANCE_MM_MOST = 50;
/** mm. More than the thickness of a thick board is no slack of measured sizes. */
export const SLACK_MM_MOST = 10;
/** No unit. Rubber on rubber stays below. */
export const FRICTION_MOST = 2;
/** Strokes at once, and rounds of a supply game. */
export const COUNT_MOST = 1_000;
/** A day in seconds, the longest that a build is watched. */
export const SECONDS_MOST = 86_400;
/** Judges mark from 0 to this. */
export const MARK_MOST = 4;
