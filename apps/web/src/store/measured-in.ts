// Which groups are measured in a challenge: somebody has seen their last try, or they are absent or not taking part.

import type { Attempt, ClassRecord, Group } from '@cairnmark/engine';
import { attemptsOf } from './class-changes.ts';

export interface MeasuredIn {
  readonly measured: readonly Group[];
  readonly notYet: readonly Group[];
}

export function measuredIn(record: ClassRecord, challenge: string): MeasuredIn {
  const isDone = ({ id }: Group): boolean => {
    const last = attemptsOf(record, id, challenge).at(-1);
    return last !== undefined && isSettled(last);
  };
  return {
    measured: record.groups.filter(isDone),
    notYet: record.groups.filter((group) => !isDone(group)),
  };
}

/** Nobody has to look at it any more. */
export const isSettled = ({ confirmedBy, state }: Attempt): boolean =>
  confirmedBy !== null || state.kind === 'absent' || state.kind === 'not-taking-part';
