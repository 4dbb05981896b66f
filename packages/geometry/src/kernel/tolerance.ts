// Every tolerance of the engine, each with its unit and its reason. No function has a default tolerance: a caller
// names the one it means.

/** mm. Two surfaces nearer than this touch. Cut and folded paper is no truer; it is over ten times any placement noise. */
export const CONTACT_MM = 0.05;

/**
 * mm. Two pieces whose outlines overlap by no more than this, seen from above, stand side by side: neither carries
 * the other. The same width as a contact, so that pieces set flush never climb on each other.
 */
export const SIDE_BY_SIDE_MM = CONTACT_MM;

/** rad. Two flat faces further from parallel than this do not count as touching face to face (0.05 mm over 50 mm). */
export const PARALLEL_RAD = 1e-3;

/** No unit (relative). Polygons that stand for an ellipse stay this near to its area and its perimeter. */
export const ROUND_OUTLINE_RELATIVE = 1e-6;
