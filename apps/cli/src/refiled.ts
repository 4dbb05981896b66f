// The drawn builds of a class as if they had been built for another challenge.

import type { Attempt, ClassRecord, Kit, ReadyId } from '@cairnmark/engine';
import { readyChallenge } from '@cairnmark/engine';

export interface Refiled {
  readonly record: ClassRecord;
  /** Of each attempt there, its index in the class that it comes from. */
  readonly indices: readonly number[];
  /** Attempts with a build that could not come along: without a drawing, or of another kit. */
  readonly leftOut: number;
}

/** Own sizes of the groups, the heights that were read and what was decided stay with the build. */
export function refiled(record: ClassRecord, id: ReadyId, name: string, kit: Kit, pieces: number | null): Refiled {
  const ofKit = new Set(record.challenges.filter((challenge) => challenge.kit.id === kit.id).map((one) => one.id));
  const kinds = new Set(kit.kinds.map((kind) => kind.id));
  const built = record.attempts.filter(({ state }) => state.kind !== 'absent' && state.kind !== 'not-taking-part');
  const drawn = built.filter(({ layout, challenge }) => layout.kind === 'laid-out' && ofKit.has(challenge));
  return {
    record: {
      ...record,
      groups: record.groups.map((group) => ({ ...group, measured: only(group.measured, kinds) })),
      challenges: [readyChallenge(id, name, kit, pieces)],
      attempts: drawn.map((attempt) => under(id, attempt)),
      supplies: {},
      day: { ...record.day, weights: {} },
    },
    indices: drawn.map((attempt) => record.attempts.indexOf(attempt)),
    leftOut: built.length - drawn.length,
  };
}

/** Answers, marks, own results and points by hand were given for the challenge that it was built for. */
const under = (challenge: string, attempt: Attempt): Attempt => ({
  ...attempt,
  challenge,
  answers: {},
  judged: [],
  own: [],
  adjustments: [],
});

const only = <T>(values: Readonly<Record<string, T>>, keys: ReadonlySet<string>): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(values).filter(([key]) => keys.has(key)));
