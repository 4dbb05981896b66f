// A reading of the ruler that looks like a slip: 81 typed for 8.1, a tape read in inches. Nothing is refused, the group is
// only asked to look again before the mean of the readings earns points.

export type ReadingDoubt =
  | { readonly about: 'apart'; readonly gapMm: number }
  | { readonly about: 'far'; readonly readingMm: number };

/** `workedOutMm`: what the drawing says; null: nothing is drawn. */
export function readingDoubt(readingsMm: readonly number[], workedOutMm: number | null): ReadingDoubt | null {
  const gapMm = Math.max(...readingsMm) - Math.min(...readingsMm);
  if (gapMm > APART_MM) return { about: 'apart', gapMm };
  const readingMm = readingsMm.find((one) => workedOutMm !== null && isFar(one, workedOutMm));
  return readingMm === undefined ? null : { about: 'far', readingMm };
}

/** mm; common practice, no source. Two people with one ruler differ by some millimetres, on crumpled paper by a centimetre. */
const APART_MM = 20;

/** Real paper sags and is cut badly, but no tower is half or twice what its pieces add up to. */
const isFar = (readingMm: number, workedOutMm: number): boolean =>
  Math.abs(readingMm - workedOutMm) > APART_MM && (readingMm > 2 * workedOutMm || 2 * readingMm < workedOutMm);
