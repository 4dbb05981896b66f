// With whom a group is compared when somebody asks why it has its place.

import type { Row } from './arrangement.ts';

/** The next group above it and it; of those at the first place it and the next below. null: there is no other place. */
export function comparedWith<T extends Row>(line: T, lines: readonly T[]): readonly [T, T] | null {
  const { place } = line;
  if (place === null) return null;
  const above = lines.filter((one) => one.place !== null && one.place < place).at(-1);
  if (above !== undefined) return [above, line];
  const below = lines.find((one) => one.place !== null && one.place > place);
  return below === undefined ? null : [line, below];
}
