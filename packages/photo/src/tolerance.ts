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

/** No unit (correlation). A marker looked for in its place is there when its cells are this much like the printed ones. */
export const LEAST_LIKENESS = 0.75;

/** No unit: the z part of a unit normal from which on a face counts as level (a hundred-thousandth of a radian). */
export const LEVEL_NORMAL = 1 - 1e-10;

/** mm. A corner of an outline lies over the corner of the body that casts it: rounding. */
export const SAME_CORNER_MM = 1e-6;

/** Corners that a person can tell apart and tap: printed prisms have twelve at most. */
export const MOST_CORNERS = 12;

/** Places along each side, and round a rim, at which edges are looked for. */
export const SIDE_SAMPLES = 24;
export const ROUND_SAMPLES = 72;

/** px. How far across the outline an edge is looked for: three deviations of a tap with the loupe, and the blur. */
export const EDGE_REACH_PX = 12;

/** Change of colour over two pixels, of 441: three times the noise of a phone in a dim room. */
export const LEAST_COLOUR_STEP = 14;

/** Steps of colour kept at each place. */
export const MOST_STEPS = 6;

/** px. A step this far from where a move brings the outline still gives most of its vote. */
export const VOTE_SIGMA_PX = 0.8;

/** px. Steps this near to the chosen outline are on its edge. */
export const ON_EDGE_PX = 1.6;

/**
 * px. Standard deviation of one step of colour on an edge. Neighbours are wrong together (blur, shade, light that spreads), so that
 * it is several times what each alone would have.
 */
export const EDGE_SIGMA_PX = 2;

/** Share of the outline. With less of it on an edge, the taps alone are taken. */
export const LEAST_SUPPORT = 0.25;

/** Standard deviations of a tap. Edges that pull a piece further from where it was tapped are others' edges. */
export const MOST_PULL_SIGMAS = 3;

/** px. Two taps nearer than this say nothing about a turn. */
export const LEAST_TAP_DISTANCE_PX = 8;

/** px. Two taps of a free outline nearer than this are on one corner: two deviations of a tap with the loupe. */
export const SAME_CORNER_PX = 4;

/** Standard deviations of a tap: a piece of the listed size does not lie under taps further off than this. */
export const MOST_TAP_OFF_SIGMAS = 6;

/** Standard deviations. All ways to lie that are off by no more are looked at; edges decide between them. */
export const MOST_CHOICE_SIGMAS = 6;

/** px. Poses whose corners all show this near to each other are one. */
export const SAME_POSE_PX = 1;

/** rad off straight down. From less a millimetre of height moves a tip by less than half a millimetre seen. 30 degrees. */
export const LEAST_SIDE_TILT_RAD = Math.PI / 6;

/** mm. Traced pieces that stand in each other by no more than this stand side by side: sizes and outlines are off by as much. */
export const BESIDE_MM = 2;

/** Standard deviations of their spots that come on top. */
export const BESIDE_SIGMAS = 2.5;

/** mm. What is left between pieces set apart: far below a contact (0.05 mm), so that they go on touching. */
export const CLEAR_MM = 1e-3;

/** mm. A piece let down by no more than this stays where it is: less moves nothing that is seen. */
export const SAME_LEVEL_MM = 0.02;

/** mm. Standard deviation of a size that pupils measured with a ruler on a folded solid. */
export const SIZE_SIGMA_MM = 0.5;

/** No unit. What edges along all of an outline are worth against half a squared deviation of the taps: five deviations. */
export const SUPPORT_WORTH = 12;

/** Share of the picture's width. A sheet with a shorter side, or a shorter way round, is too far off to measure by. */
export const LEAST_SHEET_SHARE = 0.12;

/** Share of a sheet's border that must show: a tower before it may hide the rest. */
export const LEAST_PAPER_SHARE = 0.35;

/**
 * Share of what a fit leaves over. Where the wrong paper fits at all, the right one left 0.05 to 0.66 of it (five photos); the wrong one
 * never left less than the right one.
 */
export const OTHER_PAPER_RMS_SHARE = 0.8;

/** Places along each side of a plain sheet at which its edge is measured. */
export const SHEET_SIDE_SAMPLES = 40;

/** px. Standard deviation of one place of a paper's edge: paper curls, and neighbours are wrong together. */
export const PAPER_EDGE_SIGMA_PX = 0.5;

/** Steps of brightness that may lie between a sheet and its table: paper in the shade is seldom below the first. */
export const SHEET_LEVELS: readonly number[] = [230, 220, 210, 200, 190, 180, 170, 160, 145, 130, 115, 100, 85];

/** Standard deviations. A focal length this far from what it should be says that the sheet is not the stated one. */
export const MOST_FOCAL_SIGMAS = 4;

/** mm beyond the markers in which the edge of the paper is looked for, nearest and furthest from where it should be. */
export const PAPER_EDGE_NEARER_MM = 6;
export const PAPER_EDGE_FURTHER_MM = 18;

/** Share of a side along which the edge of the paper must show for it to count. */
export const LEAST_EDGE_SUPPORT = 0.45;

/** mm. Steps of colour this near to one line belong to it. */
export const PAPER_LINE_MM = 0.35;

/** mm. Standard deviation of a paper's edge: cut to half a millimetre (ISO 216 allows 1.5 mm on sides to 300 mm), and seen. */
export const PAPER_CUT_SIGMA_MM = 0.4;

/** No unit. A sheet printed further from its size than this is told: areas would be off by twice as much. */
export const MOST_PRINT_OFF = 0.005;

/** px. A step of colour this near to a line is on it. */
export const ON_LINE_PX = 0.9;

/** Share of a side that must show an edge before it is set there. */
export const LEAST_SIDE_SUPPORT = 0.8;

/** Support less cost of another line: from here on nobody can say which of two edges was tapped, and the side stays as tapped. */
export const MOST_RIVAL_WORTH = 0.5;

/** px. Standard deviation of a corner between two sides set on edges. */
export const EDGE_CORNER_SIGMA_PX = 0.7;

/** Places along each edge of a piece at which the photo is asked whether it shows one. */
export const BODY_SAMPLES = 12;

/** px. Two corners of a top that show no further apart across the photo than this may both be its end. */
export const SAME_END_PX = 25;

/** mm. How far a build is usually off what the sizes of its pieces add up to: it only decides between taps that fit twice. */
export const EXPECTED_HEIGHT_SIGMA_MM = 7;

/** mm. Pieces whose tops are this near to the highest by their sizes may be the highest in the class: two deviations of a size. */
export const AS_HIGH_MM = 1;
