// The way back from one change of a kit: kits and measured sizes become what they were, wherever nothing else was changed
// since.

import type { ClassRecord } from '@cairnmark/engine';
import type { Change } from './class-changes.ts';

/** `after` came from `before` by one change. */
export const backFrom =
  (before: ClassRecord, after: ClassRecord): Change =>
  (record) => ({
    ...record,
    challenges: record.challenges.map((one) => {
      const changed = after.challenges.find(({ id }) => id === one.id);
      const old = before.challenges.find(({ id }) => id === one.id);
      return old === undefined || one.kit !== changed?.kit ? one : { ...one, kit: old.kit };
    }),
    groups: record.groups.map((one) => {
      const changed = after.groups.find(({ id }) => id === one.id);
      const old = before.groups.find(({ id }) => id === one.id);
      return old === undefined || one.measured !== changed?.measured ? one : { ...one, measured: old.measured };
    }),
  });
