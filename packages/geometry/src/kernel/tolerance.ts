// Every tolerance of the engine, each with its unit and its reason. No function has a default tolerance: a caller
// names the one it means.

/** mm. Two surfaces nearer than this touch. Cut and folded paper is no truer; it is over ten times any placement noise. */
export const CONTACT_MM = 0.05;

/** mm. Gaps up to this count as closed in a build whose places come from photos: two places, each a millimetre off. */
export const TRACED_GAP_MM = 2;

/**
 * mm. Two pieces whose outlines overlap by no more than this, seen from above, stand side by side: neither carries
 * the other. The same width as a contact, so that pieces set flush never climb on each other.
 */
export const SIDE_BY_SIDE_MM = CONTACT_MM;

/** rad. Two flat faces further from parallel than this do not count as touching face to face (0.05 mm over 50 mm). */
export const PARALLEL_RAD = 1e-3;

/** No unit (relative). Polygons that stand for an ellipse stay this near to its area and its perimeter. */
export const ROUND_OUTLINE_RELATIVE = 1e-6;

/** No unit (relative to the size of the pair). The drop stops when its upper and lower bounds are this near. */
export const DROP_RELATIVE = 1e-14;

/**
 * No unit (relative to the size of the pair). How far beside the true point the drop exchanges corners: well above
 * rounding (1e-16), so that no exchange is a toss-up, and far below anything that can be seen.
 */
export const DROP_NUDGE_RELATIVE = 1e-12;

/** mm2. A smaller common area of two faces is not a contact: it is one contact width each way, an edge or a corner. */
export const CONTACT_AREA_MM2 = CONTACT_MM * CONTACT_MM;

/**
 * No unit (relative to the size of the figure). A corner of a hull nearer than this to the line through its neighbours
 * is rounding, not a corner: some thousand times the rounding of one product, and below any length that is shown.
 */
export const HULL_NOISE_RELATIVE = 1e-12;

/**
 * No unit (sine of an angle). An axis this near to upright or to level is so: an upright disc tilted by it is narrower
 * by half its square, a level one thicker by twice of it, both far below a shown digit.
 */
export const AXIS_NOISE = 1e-9;

/**
 * mm. Two heights, or two gaps, nearer than this are the same: far above rounding (1e-12), far below a contact. A sum of
 * heights stands for the highest point only where the levels meet this well.
 */
export const SAME_LENGTH_MM = 1e-6;

/**
 * mm. How far a reading is nudged to see how a measure answers: a fifth of a contact, so that what touches goes on
 * touching, and ten thousand times the grid on which outlines are walked (1e-6 mm).
 */
export const NUDGE_MM = CONTACT_MM / 5;

/**
 * No unit (relative to the size of all outlines together). Boundaries nearer than this are one line: a thousand times the
 * rounding of a turned corner, a millionth of a contact. Coordinates far from the origin round coarser: see
 * COORDINATE_ROUNDING.
 */
export const COINCIDENT_RELATIVE = 1e-11;

/** No unit (relative to the largest coordinate). How far a corner may be off through being written as a double, four times over. */
export const COORDINATE_ROUNDING = 4 * 2 ** -52;

/**
 * No unit (relative to the size of all outlines together). Ends of boundary pieces nearer than this are one node when
 * they are joined to loops: well above the rounding of a shallow crossing, far below a contact. It changes no length.
 */
export const NODE_RELATIVE = 1e-8;

/** No unit (sine of an angle). Sides that meet at less are compared over their common stretch, not by their crossing. */
export const SHALLOW_SINE = 1e-4;

/**
 * rad. Sides that look at each other across a gap and are no further from parallel than this are closed where the gap is
 * narrow enough: 5 mm over the 50 mm side of a small solid, more than hands and a traced corner are off.
 */
export const FACING_RAD = 0.1;

/**
 * rad. A short side with less than this turn at both its ends stands for a piece of a curve and faces nothing, as a true
 * disc faces nothing: a regular polygon of 42 sides turns by it, printed prisms have 12 sides at most.
 */
export const ROUND_TURN_RAD = 0.15;

/** No unit (relative to the way round the outline). Only a side shorter than this can stand for a piece of a curve. */
export const ROUND_SIDE_SHARE = 1 / 40;

/**
 * mm. The grid on which unions are drawn: the boolean library is reliable on whole numbers, and a step is a five-hundredth
 * of a contact.
 */
export const DRAWN_GRID_MM = 1e-4;

/** No unit: the z part of a unit normal from which on a contact counts as level (1e-6 rad off the upright). */
export const LEVEL_NORMAL = 1 - 5e-13;

/** mm. Corners of a body this near to its furthest reach along a contact normal belong to the contact. */
export const FEATURE_MM = 1e-4;

/** mm. Corners of a contact patch this near to each other, or to a line, are one. */
export const SAME_POINT_MM = 1e-9;

/** Share of gravity. A build in which no body starts to move faster than this stands. */
export const STILL = 1e-8;

/**
 * Edges that stand for the round cone of friction. With 48 the flat-sided cone holds at least cos(pi / 48) = 0.998 of
 * it: never more than 0.06 degrees short, and the last solve sets an edge on the worst direction.
 */
export const CONE_EDGES = 48;

/** Edges of the cone while the worst direction is looked for; the answer itself is then taken with CONE_EDGES. */
export const COARSE_EDGES = 8;

/** No unit. A build that bears all but this share of a push is taken to bear it: at most 0.03 degrees. */
export const UNSEEN_SHARE = 1e-3;

/** rad. What a margin that friction decides may be too large by: a little less than the 0.1 degrees that are promised. */
export const UNSEEN_RAD = 1.5e-3;

/** mm. A centre of mass past the edge by no more than this stands on the edge: rounding, far below any reading. */
export const HANGING_MM = 1e-9;

/** No unit. Two bodies move as one when their motions differ by less than this share of the greatest motion. */
export const SAME_MOTION = 1e-3;

/**
 * No unit (shares of gravity): how far past its margin a build is pushed to see what gives way first. 0.006 degrees; where
 * friction decides, the margin itself is known to 0.1 degrees, and the second is past that.
 */
export const PAST_MARGIN: readonly number[] = [1e-4, 3e-3];

/** rad. A margin no greater than this is none: what rests on a line or a point has exactly 0, rounding adds 1e-9. */
export const NO_MARGIN_RAD = 1e-7;

/** mm. A piece whose height changes by more than this when a build is dropped anew lies on something else. */
export const SAME_LEVEL_MM = 1e-6;

/** No unit (relative). Two margins this near are one: a hundred times what programmes round, 0.00003 degrees. */
export const SAME_MARGIN = 1e-6;
