// How much a file may hold. A class of thirty pupils needs a small part of each figure; what exceeds one is a slip of the
// keyboard, or a file made to make the program stall. Lengths in mm, angles in rad.

import { MOST_PIECES } from '@cairnmark/geometry';

/** Of the numbers that scores are worked out from, the engine says how large they may be. */
export {
  COUNT_MOST,
  FRICTION_MOST,
  GAP_ALLOWANCE_MM_MOST,
  LENGTH_MM_MOST,
  MARK_MOST,
  MEASURING_ERROR_MM_MOST,
  POINTS_MOST,
  SECONDS_MOST,
  SLACK_MM_MOST,
  VALUE_MOST,
} from '@cairnmark/engine';

/** Characters of a file: a class with some 4 700 builds of twenty pieces, at 4 200 characters each. */
export const FILE_CHARACTERS_MOST = 20_000_000;
/** Values (texts, numbers, lists, groups of keys) in a file: those 4 700 builds three times over. */
export const VALUES_MOST = 2_000_000;
/** Keys in one place: a record has two dozen; answers and measured sizes have one a rule or kind, errors one a size of a kind. */
export const KEYS_MOST = 500;
/** Lists within lists: no record goes deeper than a formula in a report, which stays under this. */
export const DEPTH_MOST = 64;
/** Faults told of one file, and of one list in it: nobody reads further. */
export const ISSUES_TOLD_MOST = 100;

/** Bytes of a code on a screen: more would be finer than a tablet's camera tells apart. */
export const CODE_BYTES_MOST = 800;

/** A box of paper solids holds a dozen kinds. */
export const KINDS_MOST = 100;
/** Pieces of one kind, and pieces in one layout: as many as can be stacked. */
export const PIECES_MOST = MOST_PIECES;
/** An event day has some twenty-four groups. */
export const GROUPS_MOST = 200;
export const CHALLENGES_MOST = 50;
/** Every group at every challenge, many times over. */
export const ATTEMPTS_MOST = 5_000;
/** Rows of points, rules, criteria, tie-breaks of one challenge: more cannot be read out to a class. */
export const ROWS_MOST = 100;
/** Readings, marks, decisions and adjustments of one attempt. */
export const NOTES_MOST = 200;
/** Gaps that slack closed: a piece lies over several others. */
export const CLOSED_GAPS_MOST = 10 * PIECES_MOST;
/** Frictions stated in a kit. */
export const FRICTIONS_MOST = 100;
/** Strokes on the supply lists of one challenge: a game of an hour has some hundreds. */
export const STROKES_MOST = 10_000;
/** g. A scrap of paper on a letter scale; the equations of a build keep their digits over ten million times as much. */
export const MASS_G_LEAST = 0.01;
/** g. A piece on the kitchen scales. */
export const MASS_G_MOST = 100_000;
/** Corners of a traced outline: a hand sets tens, a camera some hundreds. */
export const OUTLINE_POINTS_MOST = 2_000;
/** Outlines of one traced build. */
export const OUTLINES_MOST = 500;
/** Lines of a working: a sum has one a piece. */
export const WORKING_LINES_MOST = PIECES_MOST;
/** Facts of a report: every measure, one a kind of piece and one a criterion. */
export const FACTS_MOST = 300;

/** Characters of a name, and of a sentence such as a reason or a rule. */
export const NAME_CHARACTERS_MOST = 80;
export const TEXT_CHARACTERS_MOST = 500;
/** Characters of an id. */
export const ID_CHARACTERS_MOST = 60;

/** rad. Sixteen times round either way; a turn that grew beyond it has lost digits. */
export const TURN_RAD_MOST = 100;
/** g/m2. Tissue to thick board. */
export const PAPER_G_PER_M2_LEAST = 10;
export const PAPER_G_PER_M2_MOST = 2_000;
/** g/cm3. Air-filled foam balls to osmium. */
export const DENSITY_G_PER_CM3_LEAST = 0.001;
export const DENSITY_G_PER_CM3_MOST = 23;
