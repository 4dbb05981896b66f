// Every tolerance of the photographs, each with its unit and its reason. px are pixels of the picture as handed in.

/** Cells of a marker, its border included, that may be read wrong: the codes differ by at least four in any turn but one. */
export const MOST_WRONG_BITS = 1;

/** Steps of brightness of 255 between paper and ink: a third of what a printer on paper gives in the shade of a tower. */
export const LEAST_CONTRAST = 25;

/** px. Below this a side of a marker has less than a pixel and a half a cell, and its code is a matter of luck. */
export const LEAST_MARKER_SIDE_PX = 8;

/** Shares of the picture's width: squares in which a marker far off, and one close by, is told from the paper about it. */
export const THRESHOLD_RADII: readonly number[] = [1 / 100, 1 / 24];

/** Steps of brightness by which ink must be darker than the mean about it: above the noise of a phone in a dim room. */
export const DARKER = 7;

/** px. The longest side of a picture below which side views lose markers: measured, 1 600 less a little for rounding. */
export const LEAST_LONG_SIDE_PX = 1590;

/** Markers on which a camera can stand: with two, one wrong corner turns the whole sheet unseen. */
export const LEAST_MARKERS = 3;

/** Share of the longest side. So far off where two others say, a marker still belongs: lens and taping are not yet fitted. */
export const AGREEING_SHARE = 0.03;

/** px. Standard deviation of a corner's coordinate before anything is known of the photo. */
export const FIRST_CORNER_SIGMA_PX = 0.3;

/** px. No photo is better than this: noise of the pixels, whole steps of brightness and the stored picture's own. */
export const LEAST_CORNER_SIGMA_PX = 0.03;

/** Standard deviations. A marker with a corner this far off is bent, half hidden or none of ours. */
export const STRAY_SIGMAS = 6;

/** No unit. Lenses of phones, as their pictures are stored: at the corner of a picture 0.1 moves a point by 7 %. */
export const K1_SIGMA = 0.1;

/** px. Seen so far 0.1 to 0.8, by blur. */
export const BLOOM_SIGMA_PX = 1;

/** mm and rad. How far from edge to edge people tape four pages. */
export const PAGE_SIGMA_MM = 8;
export const PAGE_SIGMA_RAD = 0.05;

/** Share of the longest side. More left over means that the sheet is not flat, or was moved. 1.6 px of 1 632. */
export const MOST_RMS_SHARE = 0.001;

/** Standard deviation of the focal length as a share: past it, heights are off by as much. */
export const MOST_FOCAL_SIGMA_SHARE = 0.05;
