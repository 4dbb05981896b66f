// What is known of the focal length before the photograph is looked at.

export interface FocalPrior {
  readonly focalPx: number;
  /** Standard deviation as a share of it. */
  readonly sigmaShare: number;
}

/**
 * From the 35 mm equivalent in the file (EXIF 2.32, tag 0xA405; null where there is none): the frame of 35 mm film has a diagonal
 * of 43.27 mm. A picture longer than 3 : 2 is taken as a crop of one of 4 : 3, whose diagonal is 1.25 of its long side
 * (common practice, no source). Without it, what phones usually have.
 */
export function focalPrior(widthPx: number, heightPx: number, focal35Mm: number | null): FocalPrior {
  const [long, short] = [Math.max(widthPx, heightPx), Math.min(widthPx, heightPx)];
  const diagonalPx = long > LONGEST_FRAME * short ? 1.25 * long : Math.hypot(long, short);
  const usable = focal35Mm !== null && Number.isFinite(focal35Mm) && focal35Mm > 0;
  return usable
    ? { focalPx: (focal35Mm / FILM_DIAGONAL_MM) * diagonalPx, sigmaShare: STATED_SIGMA }
    : { focalPx: (USUAL_MM / FILM_DIAGONAL_MM) * diagonalPx, sigmaShare: USUAL_SIGMA };
}

const FILM_DIAGONAL_MM = 43.27;
/** Sides of a frame that is not a crop: up to 3 : 2, with a little for rounding. */
const LONGEST_FRAME = 1.52;
/** Whole millimetres, and a picture stabilised or corrected by a crop. */
const STATED_SIGMA = 0.035;
/** The main camera of phones (measured before on public lists: 23 to 28 mm). */
const [USUAL_MM, USUAL_SIGMA] = [26, 0.12];
