// Of two towers of the same pieces, one need not be gone on with: the other is as high, tips no sooner at its joints, puts
// no greater moment on what goes below and has as wide an underside.

import type { Placed } from './placing.ts';
import { insideBoth } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import type { Aim } from './search.ts';

/** A memory that says of each tower whether one like it was seen before that is no worse; if not, it is remembered. */
export function dominance(
  prepared: Prepared,
  matters: Aim['matters'],
): (placed: Placed, used: readonly number[]) => boolean {
  const seen = new Map<number | string, Placed[]>();
  const keyOf = keys(prepared);
  const noWider = undersides(prepared.ways);
  const isNoWorse = (one: Placed, other: Placed): boolean =>
    one.moment <= other.moment &&
    noWider.get(one.way)?.has(other.way) === true &&
    isNoWorseHeight(one.heightMm, other.heightMm, matters.height) &&
    (!matters.push || Math.min(one.tipsPush, one.slidesPush) >= Math.min(other.tipsPush, other.slidesPush));
  return (placed, used) => {
    const key = keyOf(placed, used);
    const like = seen.get(key);
    if (like === undefined) {
      seen.set(key, [placed]);
      return false;
    }
    if (like.some((one) => isNoWorse(one, placed))) return true;
    seen.set(key, [...like.filter((one) => !isNoWorse(placed, one)), placed]);
    return false;
  };
}

/**
 * Of every way the ways whose underside reaches no farther than its own, on the table and on whatever may carry it. A round
 * face reaches less where it lies only partly on another, so that no two numbers alone tell.
 */
function undersides(ways: readonly WayOf[]): ReadonlyMap<WayOf, ReadonlySet<WayOf>> {
  const carriers = ways.filter(({ carries }) => carries);
  const reaches = ways.map((way) => ({
    way,
    onEach: [way.up.bottomInsideMm, ...carriers.map(({ up }) => insideBoth(way.up, up))],
  }));
  return new Map(
    reaches.map(({ way, onEach }) => [
      way,
      new Set(
        reaches
          .filter((other) => other.onEach.every((reachMm, k) => reachMm <= (onEach[k] ?? 0)))
          .map((other) => other.way),
      ),
    ]),
  );
}

function isNoWorseHeight(oneMm: number, otherMm: number, matters: Aim['matters']['height']): boolean {
  if (matters === 'no') return true;
  return oneMm === otherMm || (matters !== 'same' && oneMm > otherMm === (matters === 'more'));
}

/** A name for the pieces used; where pieces grip differently, for the lowest kind too. */
function keys({ stock, most, task, ways }: Prepared): (placed: Placed, used: readonly number[]) => number | string {
  const radices = stock.map((count) => Math.min(count, most) + 1);
  const names = radices.reduce((product, radix) => product * radix, stock.length + 1);
  const gripsAlike =
    task.grips === null ||
    areAlike(
      ways.map(({ kind }) => kind),
      task.grips.between,
    );
  if (names > Number.MAX_SAFE_INTEGER) {
    return ({ way }, used) => `${used.join(' ')}${gripsAlike ? '' : ` on ${way.kind}`}`;
  }
  return ({ way }, used) =>
    used.reduce((name, count, kind) => name * (radices[kind] ?? 1) + count, gripsAlike ? 0 : way.kind + 1);
}

function areAlike(kinds: readonly number[], between: readonly (readonly number[])[]): boolean {
  const frictions = new Set(kinds.flatMap((upper) => kinds.map((lower) => between[upper]?.[lower])));
  return frictions.size <= 1;
}
