// Every tolerance and every measure of the craft in this package, with its unit and its reason. No function has a
// default tolerance.

/** mm. How far a curve is off the straight pieces that stand for it when a net is placed: a tenth of a printed line. */
export const FLATTEN_MM = 0.02;

/** No unit (relative to the size of the pair). Figures that overlap by less only touch: a thousand times rounding. */
export const TOUCH_RELATIVE = 1e-10;

/** No unit (relative). Two ways to lay out a net that need pages this near in size need the same page. */
export const SAME_PAGE_RELATIVE = 1e-6;

/** mm. A net reaching past a frame by less than this fits: rounding of its corners, far below a printed line. */
export const FIT_MM = 1e-9;

/** No unit (share of the scale). The largest net that fits a page is looked for until it is known to this. */
export const LARGEST_RELATIVE = 1e-4;

/** mm. Largest sizes are told in steps of half a millimetre, downwards: what a school ruler still shows. */
export const LARGEST_STEP_MM = 0.5;

/** mm. How deep tabs are where there is room, for most hands. */
export const USUAL_TAB_DEPTH_MM = 8;

/** mm. For young hands. Common practice, no source. */
export const DEEP_TAB_DEPTH_MM = 10;

/** rad. Room for the scissors between a tab and what lies beside it. Common practice, no source. */
export const SCISSORS_GAP_RAD = (6 / 180) * Math.PI;

/** No unit. Room ahead of a tab, as a share of its depth: the cut there needs paper on both sides. */
export const ROOM_AHEAD_SHARE = 1 / 8;

/** rad. The ends of a tab lean in at least so far (90 - 60 degrees), so that no corner shows beside its mate. */
export const STEEPEST_BEVEL_RAD = Math.PI / 3;

/** No unit. A tab is no deeper than this share of its edge, and of its mate across that edge: two fit side by side. */
export const DEEPEST_SHARE = 0.45;

/** No unit. The far side of a tab keeps at least this share of its edge: a pointed tab tears. */
export const FAR_SIDE_SHARE = 0.1;

/** mm. A tab less deep than this holds no glue: use tape. Common practice, no source. */
export const TAPE_BELOW_MM = 4;

/** mm. How far the straight fold of a tooth may lie inside the round rim that it stands for. */
export const TOOTH_SAGITTA_MM = 0.4;

/** rad. The ends of a tooth lean in at least so far (90 - 75 degrees): the notch between two teeth is cut in one go. */
export const STEEPEST_TOOTH_RAD = (75 / 180) * Math.PI;

/** rad. Neighbouring teeth, glued on their disc, keep this much apart on either side. */
export const TOOTH_ROOM_RAD = (3 / 180) * Math.PI;

/** No unit. A tooth reaches in from the rim by no more than this share of the disc's radius. */
export const TOOTH_RADIUS_SHARE = 0.6;

/** rad. A fan of faces is laid out only where at least this much is left open for its last tab. */
export const LEAST_FAN_GAP_RAD = Math.PI / 4;

/** No unit (share of the solid's reach). Corners that a turn brings this near to each other are the same corner. */
export const SAME_POINT_SHARE = 1e-6;

/** No unit (sine). Two axes that differ by less are one: a thousand times the rounding of a unit vector. */
export const SAME_DIRECTION = 1e-6;
