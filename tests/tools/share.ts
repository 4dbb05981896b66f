// How much of a seeded family a run takes, and the seed of its fresh members.

/** `full` in the long run (npm run test:long), `part` in the ordinary one. */
export function share<T>(full: T, part: T): T {
  return process.env['CAIRNMARK_LONG'] === '1' ? full : part;
}

/**
 * A seed that is new in every run, and different for each label: a whole number below 2^31. It comes from the run's own
 * seed, which is told once at the start; the run is repeated by handing that one in as CAIRNMARK_SEED.
 */
export function freshSeed(label: string): number {
  const runSeed = Number(process.env['CAIRNMARK_SEED']);
  if (!Number.isSafeInteger(runSeed)) throw new RangeError('CAIRNMARK_SEED is no whole number: see vitest.config.ts');
  let hash = runSeed | 0;
  for (const character of label) hash = (Math.imul(hash, 31) + (character.codePointAt(0) ?? 0)) | 0;
  return hash >>> 1;
}

/** All of them in the long run; in an ordinary one every `of`-th, beginning where the run's seed says. */
export function inTurn<T>(items: readonly T[], of: number, label: string): T[] {
  const every = share(1, Math.min(of, items.length));
  const first = freshSeed(label) % every;
  return items.filter((_, k) => k % every === first);
}
