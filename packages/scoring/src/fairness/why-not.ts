// [F7] Why no points favour the kind. The proofs are looked for from the plainest on, and each is told with what is needed to
// add it up by hand.

import type { Meter } from './exact/meter.ts';
import type { FavourTask, WhyNot } from './favour-types.ts';
import { mixAgainst } from './mix.ts';
import { outOfReach } from './reach.ts';

/** Of a task that has no solution; null where the work limit was reached. */
export function whyNot(task: FavourTask, meter: Meter): WhyNot | null {
  return plainReason(task) ?? mixAgainst(task, meter) ?? outOfReach(task, meter);
}

function plainReason({ data, favourite, negative }: FavourTask): WhyNot | null {
  const own = data.kinds.find(({ id }) => id === favourite)?.measures ?? [];
  const others = data.kinds.filter(({ id }) => id !== favourite);
  if (!negative && own.every((count) => count === 0)) return { code: 'zero' };
  const twin = others.find(({ measures }) => measures.every((count, j) => count === own[j]));
  if (twin !== undefined) return { code: 'twin', by: twin.id };
  const above = negative
    ? undefined
    : others.find(({ measures }) => measures.every((count, j) => count >= (own[j] ?? 0)));
  return above === undefined ? null : { code: 'dominated', by: above.id };
}
