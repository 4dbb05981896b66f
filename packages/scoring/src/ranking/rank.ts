// Standings of one challenge. Rules [K..] of RULES.md. Neither the order of the entries nor the names of the groups
// decide anything: among equals the list goes by group id, so that it looks the same each time, at the same place.

import type { Entry, OutReason, RankingRule, Standing } from '../types.ts';
import type { KeyValue } from './keys.ts';
import { compareKeys, keyValues } from './keys.ts';
import { withinError } from './near.ts';
import { byGroup, byId, places } from './places.ts';

/** One standing an entry: those with a place, the best first, then those that are out. One entry a group. */
export function rank(entries: readonly Entry[], rule: RankingRule): Standing[] {
  const runners = entries.map((entry) => runnerOf(entry, rule)).sort(byGroup);
  const near = withinError(runners.flatMap((runner) => readingOf(runner, rule)));
  const placed = places(runners.filter(takesPlace), (a, b) => compareKeys(a.keys, b.keys));
  const placeOf = new Map(placed.map(({ item, place }) => [item.group, place]));
  return [
    ...placed.map(({ item, place, sharedWith }) => ({
      ...withoutPlace(item),
      place,
      sharedWith: sharedWith.map(({ group }) => group),
      withinErrorOf: (near.get(item.group) ?? []).filter((other) => placeOf.get(other) !== place).sort(byId),
    })),
    ...runners.filter((runner) => !takesPlace(runner)).map(withoutPlace),
  ];
}

/** The entries at the first place, without a look at the other places; none when every entry is out. */
export function leaders(entries: readonly Entry[], rule: RankingRule): readonly Entry[] {
  const runners = entries.map((entry) => runnerOf(entry, rule)).filter(takesPlace);
  const [first, ...others] = runners;
  if (first === undefined) return [];
  const best = others.reduce((ahead, one) => (compareKeys(one.keys, ahead.keys) < 0 ? one : ahead), first);
  return runners.filter(({ keys }) => compareKeys(keys, best.keys) === 0).map(({ entry }) => entry);
}

interface Runner {
  readonly group: string;
  readonly entry: Entry;
  readonly keys: readonly KeyValue[];
  readonly out: readonly OutReason[];
}

const takesPlace = ({ out }: Runner): boolean => out.length === 0;

function runnerOf(entry: Entry, rule: RankingRule): Runner {
  const keys = keyValues(entry.values, rule);
  const unmeasured = (entry.values.get(rule.first.by)?.value ?? null) === null;
  const missing = { code: 'not-measured', measures: [rule.first.by] } as const;
  return { group: entry.group, entry, keys, out: unmeasured && entry.out.length === 0 ? [missing] : entry.out };
}

/** The first key as it was measured, before rounding; of those with a place only. */
function readingOf(runner: Runner, { first }: RankingRule) {
  const { group, entry } = runner;
  const fact = entry.values.get(first.by);
  if (!takesPlace(runner) || fact === undefined || fact.value === null) return [];
  const { value, tolerance, errors, steps = [] } = fact;
  return [{ group, value, tolerance, errors, steps }];
}

function withoutPlace({ group, keys, out }: Runner): Standing {
  const decidedBy = keys.map(({ by, value }) => ({ by, value }));
  return { group, place: null, decidedBy, sharedWith: [], withinErrorOf: [], out };
}
