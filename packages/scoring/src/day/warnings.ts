// What a class should know before it reads the places of the day. A warning changes no place. Rules [D8] and [D9] of
// RULES.md.

import { byId } from '../ranking/places.ts';
import type { DayRule, DayWarning } from '../types.ts';
import { weightOf } from './weight.ts';

/** A mark of a judge, on an attempt that counts. */
export interface GivenMark {
  readonly group: string;
  readonly judge: string;
  readonly criterion: string;
}

export interface DayChallenge {
  readonly challenge: string;
  /** Of the measures in its points table, in any order; counts of every kind are of one unit, `count`. */
  readonly units: readonly string[];
  readonly marks: readonly GivenMark[];
}

/**
 * First the one about units, then those about judges, challenge by challenge.
 * Throws RangeError for a negative weight.
 */
export function dayWarnings(rule: DayRule, challenges: readonly DayChallenge[]): DayWarning[] {
  return [...unitWarnings(rule, challenges), ...challenges.flatMap(judgeWarnings)];
}

/** Only where points are added up. A challenge of weight 0 adds none, and one without a points table has no unit. */
function unitWarnings(rule: DayRule, challenges: readonly DayChallenge[]): DayWarning[] {
  if (rule.kind !== 'sum-of-points') return [];
  const added = challenges.filter(({ challenge, units }) => units.length > 0 && weightOf(challenge, rule) > 0n);
  if (new Set(added.map(({ units }) => JSON.stringify(inOrder(units)))).size < 2) return [];
  return [
    {
      code: 'points-of-different-units',
      challenges: added.map(({ challenge }) => challenge),
      units: inOrder(added.flatMap(({ units }) => units)),
    },
  ];
}

function judgeWarnings({ challenge, marks }: DayChallenge): DayWarning[] {
  return inOrder(marks.map(({ criterion }) => criterion)).flatMap((criterion): DayWarning[] => {
    const judges = judgesOf(marks.filter((mark) => mark.criterion === criterion));
    if (new Set(judges.map(({ groups }) => JSON.stringify(groups))).size < 2) return [];
    return [{ code: 'judges-of-different-groups', challenge, criterion, judges }];
  });
}

/** Every judge with the groups that they marked. */
function judgesOf(marks: readonly GivenMark[]) {
  return inOrder(marks.map(({ judge }) => judge)).map((judge) => {
    return { judge, groups: inOrder(marks.filter((mark) => mark.judge === judge).map(({ group }) => group)) };
  });
}

/** Each once, in an order that does not depend on that of entry. */
const inOrder = (ids: readonly string[]): string[] => [...new Set(ids)].sort(byId);
