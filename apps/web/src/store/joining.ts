// Whether two groups can go on as one without changing a result of what either has built.

import type { ClassRecord } from '@cairnmark/engine';
import { piecesUsed } from '@cairnmark/engine';

export type AgainstJoining =
  /** The one that joins built with pieces whose sizes the other one does not share. */
  | 'sizes'
  /** One has built where the other earned: what they earned would be more than it was. */
  | 'supply';

/** What would change a result if `from` became a part of `into`; null: nothing. */
export function againstJoining(record: ClassRecord, from: string, into: string): AgainstJoining | null {
  if (measuredApart(record, from, into)) return 'sizes';
  const shared = record.challenges.some(
    ({ id }) =>
      (hasBuilt(record, id, from) && hasEarned(record, id, into)) ||
      (hasBuilt(record, id, into) && hasEarned(record, id, from)),
  );
  return shared ? 'supply' : null;
}

function measuredApart({ groups, attempts }: ClassRecord, from: string, into: string): boolean {
  const [own, others] = [from, into].map((group) => groups.find(({ id }) => id === group)?.measured ?? {});
  const used = new Set(attempts.filter(({ group }) => group === from).flatMap(({ layout }) => piecesUsed(layout)));
  return [...used].some((kind) => JSON.stringify(own?.[kind]) !== JSON.stringify(others?.[kind]));
}

const hasBuilt = ({ attempts }: ClassRecord, challenge: string, group: string): boolean =>
  attempts.some((one) => one.challenge === challenge && one.group === group);

const hasEarned = ({ supplies }: ClassRecord, challenge: string, group: string): boolean =>
  (supplies[challenge] ?? []).some((stroke) => stroke.group === group && stroke.takenBack !== true);
