// The grid on which outlines are packed.

/**
 * mm. Side of a cell. A cell that an outline touches is all taken by it, so that on average half a cell is lost on each side;
 * cells half as large take four times as long and save no sheet of six sets of twelve nets, cells of 1 mm cost three of Letter.
 */
export const CELL_MM = 0.5;

/** mm. Between two outlines: room for the scissors (common practice, no source). */
export const GAP_MM = 3;

/** Cells left free between two outlines. The cells that they touch are then GAP_MM apart, and so are they. */
export const GAP_CELLS = Math.ceil(GAP_MM / CELL_MM);

/** How many turns are tried, evenly round; besides these the one at which the outline leaves most room on the page. */
export const TURNS = 24;

/** No unit (cells). A length this little above a whole number of cells is that number: rounding. */
export const CELL_SLACK = 1e-9;
