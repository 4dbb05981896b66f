// For which challenges a kit is used: the one at work, and every other that names the same kit and that nobody has built
// under. Challenges that groups have built under keep their kit as it was.

import type { Challenge, ClassRecord, Kit } from '@cairnmark/engine';
import { isLocked } from './challenge-lock.ts';
import type { Change } from './class-changes.ts';
import { isPlayed } from './played.ts';

export interface KitUse {
  /** Its sizes, materials and kinds stay: groups have built under the challenge at work. */
  readonly locked: boolean;
  /** The challenge at work first. */
  readonly usedBy: readonly Challenge[];
  /** Built under, with a kit of the same name: they keep theirs. */
  readonly keep: readonly Challenge[];
}

export function kitUse(record: ClassRecord, at: Challenge): KitUse {
  const others = record.challenges.filter((one) => one.id !== at.id && one.kit.id === at.kit.id);
  return {
    locked: isLocked(record, at.id),
    usedBy: [at, ...others.filter(({ id }) => !isPlayed(record, id))],
    keep: others.filter(({ id }) => isPlayed(record, id)),
  };
}

/** Changes that alter no old result: names, numbers of pieces. They are made for a played challenge too. */
export const changeKit =
  (challenge: string, change: (kit: Kit) => Kit): Change =>
  (record) => {
    const at = record.challenges.find(({ id }) => id === challenge);
    if (at === undefined) return record;
    const kit = change(at.kit);
    if (kit === at.kit) return record;
    const followers = new Set(kitUse(record, at).usedBy.map(({ id }) => id));
    // Kits of one name may have gone ways of their own, while groups built under one of them: the others get the change, not
    // the kit.
    const next = (one: Challenge): Kit => (isSame(one.kit, at.kit) ? kit : change(one.kit));
    return {
      ...record,
      challenges: record.challenges.map((one) => (followers.has(one.id) ? { ...one, kit: next(one) } : one)),
    };
  };

/**
 * Changes that results are worked out from: sizes, materials, kinds. A challenge that groups have built under stays as it
 * is; one that has only copies of builds can be mended.
 */
export const changePieces =
  (challenge: string, change: (kit: Kit) => Kit): Change =>
  (record) =>
    isLocked(record, challenge) ? record : changeKit(challenge, change)(record);

const isSame = (a: Kit, b: Kit): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
