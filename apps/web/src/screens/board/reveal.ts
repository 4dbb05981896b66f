// Places shown one by one, from the last to the first. Groups that share a place are shown together; those without a place
// are shown from the beginning.

export interface Placed {
  readonly place: number | null;
}

/** The places there are, in the order in which they are shown. */
export const placesToReveal = (standings: readonly Placed[]): readonly number[] =>
  [...new Set(standings.flatMap(({ place }) => (place === null ? [] : [place])))].sort((a, b) => b - a);

/** `revealed`: how many places are shown by now; null: all are. */
export function isRevealed({ place }: Placed, places: readonly number[], revealed: number | null): boolean {
  return place === null || revealed === null || places.indexOf(place) < revealed;
}

/** One place more, or one less for -1; stays between none and all. */
export const stepped = (revealed: number, step: 1 | -1, places: readonly number[]): number =>
  Math.min(places.length, Math.max(0, revealed + step));
