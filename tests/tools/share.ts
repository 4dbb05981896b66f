// How much of a seeded family a run takes: a stated share in the ordinary run, all of it in the long one.

/** `full` in the long run, `part` in the ordinary one. */
export function share(full: number, part: number): number {
  return process.env['CAIRNMARK_LONG'] === '1' ? full : part;
}

/** A new seed for this run, printed so that a failure can be repeated with CAIRNMARK_SEED. */
export function freshSeed(label: string): number {
  const given = process.env['CAIRNMARK_SEED'];
  const seed = given === undefined ? Math.floor(Math.random() * 2 ** 31) : Number(given);
  process.stdout.write(`fresh seed for ${label}: ${seed} (repeat with CAIRNMARK_SEED=${seed})\n`);
  return seed;
}
