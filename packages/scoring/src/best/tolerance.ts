// Tolerances of the search for the best build, each with its unit and its reason.

/**
 * No unit (relative). Values this near are one: a thousand times the rounding of a sum of a few dozen terms, far below any
 * shown digit. A tower within it of what a rule asks keeps the rule, and one that is better by less is no better.
 */
export const SAME_VALUE = 1e-12;

/**
 * mm. A face that reaches less than this past the centre of mass holds nothing: the piece lies on an edge, to within the
 * rounding of its corners. A thousandth of a contact.
 */
export const STANDS_MM = 5e-5;

/** mm. A disc that reaches no further than this past the edge of what it lies on lies wholly on it: rounding of its radius. */
export const WHOLE_MM = 1e-9;
