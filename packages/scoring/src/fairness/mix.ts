// Pieces of several kinds that together always earn at least as much as so many of the chosen one. There are such pieces, or
// there are points (of some size) that favour it, never both: Gordan 1873, Motzkin 1936 (from memory).

import { divisor } from './exact/fraction.ts';
import type { Meter } from './exact/meter.ts';
import { within } from './exact/meter.ts';
import type { AtLeast } from './exact/tableau.ts';
import { mended, tableauOf } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';
import type { FavourTask, Times, WhyNot } from './favour-types.ts';
import { wholeFavour } from './whole-task.ts';

type Mix = Extract<WhyNot, { code: 'mix' }>;

/** With few pieces, since people add them up; null where points of some size favour the kind. */
export function mixAgainst(task: FavourTask, meter: Meter): Mix | null {
  const { more, rows, negative } = wholeFavour(task);
  const signs = negative ? [-1n, 1n] : [-1n];
  const beaten: readonly AtLeast[] = signs.flatMap((sign) =>
    Array.from({ length: rows }, (_, j) => ({ of: more.map((one) => sign * (one[j] ?? 0n)), limit: 0n })),
  );
  const some = anyPieces(beaten, more.length);
  if (some === null) return null;
  return told(task, fewer(beaten, some, within(meter, BRANCHES_FOR_FEWER)));
}

/** Branches that are spent on a proof with fewer pieces: a nicety, some tenths of a second at most. */
const BRANCHES_FOR_FEWER = 200;

/** How many of each kind, at least one in all; some solution, made whole. */
function anyPieces(rows: readonly AtLeast[], kinds: number): readonly bigint[] | null {
  const one = Array.from({ length: kinds }, () => 1n);
  const { tableau, broken } = mended(tableauOf({ cost: one, rows: [...rows, { of: one, limit: 1n }] }));
  if (broken !== null) return null;
  const pieces = one.map((_, k) => tableau.inside.find(({ variable }) => variable === k)?.value ?? 0n);
  const common = pieces.reduce(divisor, 0n);
  return pieces.map((count) => count / common);
}

/** The fewest pieces that are found, from two on, or those that are there. */
function fewer(rows: readonly AtLeast[], some: readonly bigint[], meter: Meter): readonly bigint[] {
  const one = some.map(() => 1n);
  const most = one.map((_, k) => -BigInt(k + 1));
  for (let pieces = 2n; pieces < sumOf(some); pieces += 1n) {
    const exactly = [
      { of: one, limit: pieces },
      { of: one.map(() => -1n), limit: -pieces },
    ];
    // Of equally many pieces those of kinds that stand first in the kit.
    const cost = most.map((rank) => -rank);
    const answer = cheapestWhole({
      programme: { cost, rows: [...rows, ...exactly] },
      whole: one.length,
      below: null,
      first: false,
      meter,
    });
    if (answer.status === 'found') return answer.values;
    if (answer.status === 'stopped') break;
  }
  return some;
}

const sumOf = (values: readonly bigint[]): bigint => values.reduce((sum, one) => sum + one, 0n);

/** Added up from the counts themselves. Throws RangeError where it proves nothing: a fault of the search. */
function told({ data, favourite, negative }: FavourTask, pieces: readonly bigint[]): Mix {
  const own = data.kinds.find(({ id }) => id === favourite)?.measures ?? [];
  const theirs = data.kinds.filter(({ id }) => id !== favourite);
  const others: readonly Times[] = theirs.flatMap(({ id }, k) => {
    const times = Number(pieces[k] ?? 0n);
    return times > 0 ? [{ kind: id, times }] : [];
  });
  const times = Number(sumOf(pieces));
  const totalOfFavourite = own.map((count) => count * times);
  const totalOfOthers = own.map((_, j) =>
    theirs.reduce((sum, { measures }, k) => sum + (measures[j] ?? 0) * Number(pieces[k] ?? 0n), 0),
  );
  const proves = totalOfOthers.every((total, j) => {
    const less = total - (totalOfFavourite[j] ?? 0);
    return negative ? less === 0 : less >= 0;
  });
  if (times === 0 || !proves) throw new RangeError(`these pieces prove nothing about ${favourite}`);
  return { code: 'mix', times, others, totalOfFavourite, totalOfOthers };
}
