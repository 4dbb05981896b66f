// Numbers that look drawn by lot and are the same for the same seed.
// Source: the "minimal standard" generator, Park and Miller 1988, with the multiplier 48271 of 1993 (from memory).

/** Draws between 0 and 1, both left out. */
export function seeded(seed: number): () => number {
  let state = 1 + (seed % (MODULUS - 1));
  return () => {
    state = (state * 48271) % MODULUS;
    return state / MODULUS;
  };
}

const MODULUS = 2 ** 31 - 1;
