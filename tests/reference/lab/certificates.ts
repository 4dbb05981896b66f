// Whether a reason why no points favour a kind is a proof: added up from the counts alone. Nothing of the search is used.

import type { EvenTask, ExactlyEven, FavourTask, LabKind, NoRule, Times, WhyNot } from '@cairnmark/scoring';

export function proves(why: WhyNot, { data, favourite, lead, most, negative, step }: FavourTask): boolean {
  const counts = new Map(data.kinds.map(({ id, measures }) => [id, measures]));
  const own = counts.get(favourite)!;
  const everyRow = (holds: (count: number, row: number) => boolean): boolean => own.every(holds);
  switch (why.code) {
    case 'zero':
      return !negative && everyRow((count) => count === 0);
    case 'twin':
      return why.by !== favourite && everyRow((count, j) => counts.get(why.by)![j] === count);
    case 'dominated':
      return !negative && why.by !== favourite && everyRow((count, j) => counts.get(why.by)![j]! >= count);
    case 'mix': {
      const pieces = why.others.reduce((sum, { times }) => sum + times, 0);
      const total = (j: number): number =>
        why.others.reduce((sum, { kind, times }) => sum + times * counts.get(kind)![j]!, 0);
      const fair =
        pieces > 0 && pieces === why.times && why.others.every(({ kind, times }) => kind !== favourite && times > 0);
      const told = everyRow(
        (count, j) => why.totalOfOthers[j] === total(j) && why.totalOfFavourite[j] === count * pieces,
      );
      return (
        fair && told && everyRow((count, j) => (negative ? total(j) === count * pieces : total(j) >= count * pieces))
      );
    }
    case 'lead-out-of-reach': {
      const more = data.kinds
        .filter(({ id }) => id !== favourite)
        .map((one) => own.map((n, j) => n - one.measures[j]!));
      const box = (points: number): Box => own.map(() => [negative ? -points / step : 0, points / step]);
      const beyond = why.greatestLead / step + 1;
      return (
        why.greatestLead < lead &&
        excludes(why.proof.noMoreLead, box(most), more, beyond) &&
        (why.maxNeeded === null || excludes(why.proof.noSmallerMost!, box(why.maxNeeded - step), more, lead / step))
      );
    }
  }
}

type Box = readonly (readonly [least: number, most: number])[];

/** That no whole rates of the box give each of the others so much less. */
function excludes(proof: NoRule, box: Box, more: readonly (readonly number[])[], lead: number): boolean {
  if ('shares' in proof) {
    const { shares } = proof;
    const rows = box.map((_, j) => shares.reduce((sum, share, s) => sum + share * BigInt(more[s]![j]!), 0n));
    const best = box.reduce((sum, [low, high], j) => sum + rows[j]! * BigInt(rows[j]! > 0n ? high : low), 0n);
    return shares.every((share) => share >= 0n) && best < BigInt(lead) * shares.reduce((sum, share) => sum + share, 0n);
  }
  const { row, upTo, below, above } = proof;
  const cut = (limits: readonly [number, number]): Box => box.map((one, j) => (j === row ? limits : one));
  const [least, most] = box[row]!;
  return excludes(below, cut([least, upTo]), more, lead) && excludes(above, cut([upTo + 1, most]), more, lead);
}

/** Whether pieces show that no points are exactly even: added up from the counts, the cost of a piece being 1. */
export function provesNeverEven(
  { these, those }: Extract<ExactlyEven, { possible: false }>,
  { data, negative }: EvenTask,
): boolean {
  const total = (times: readonly Times[], of: (kind: LabKind) => number): number =>
    times.reduce((sum, one) => sum + one.times * of(data.kinds.find(({ id }) => id === one.kind)!), 0);
  const more = (of: (kind: LabKind) => number): number => total(these, of) - total(those, of);
  const counted = data.rows.map((_, j) => j).filter((j) => data.kinds.some(({ measures }) => measures[j]! > 0));
  const inRows = counted.map((j) => more(({ measures }) => measures[j]!));
  return negative
    ? more(() => 1) !== 0 && inRows.every((one) => one === 0)
    : more(() => 1) === 0 && inRows.every((one) => one > 0);
}
