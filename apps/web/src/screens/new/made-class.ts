// What somebody filled in for a new class, as a class: its groups, its first challenges with their kit, and a day that adds
// up places. All of it can be changed afterwards.

import type { Challenge, ClassRecord, GradePreset, Kit, ReadyId, ReadyKind } from '@cairnmark/engine';
import { readyChallengeFor, readyKit } from '@cairnmark/engine';
import { addGroups } from '../../store/group-changes.ts';
import type { ReadNames } from '../../store/group-names.ts';

export interface NewClass {
  readonly name: string;
  readonly groups: ReadNames['names'];
  readonly challenges: readonly ReadyId[];
  readonly grade: GradePreset;
  readonly units: 'cm' | 'in';
  /** `own`: empty, for solids of one's own. */
  readonly kit: 'ready' | 'own';
}

/** The words that stand in the class itself, in the language it is made in. */
export interface Names {
  readonly kit: string;
  readonly kinds: Readonly<Record<ReadyKind, string>>;
  readonly challenges: Readonly<Record<ReadyId, string>>;
}

export function madeClass({ name, groups, challenges, grade, units, kit }: NewClass, names: Names): ClassRecord {
  const full = readyKit(names.kit, names.kinds, groups.length, units);
  const pieces: Kit = kit === 'ready' ? full : { ...full, kinds: [] };
  const empty: ClassRecord = {
    name,
    invented: false,
    groups: [],
    challenges: challenges.map(
      (id): Challenge => readyChallengeFor(id, names.challenges[id], pieces, null, { grade, units }),
    ),
    attempts: [],
    supplies: {},
    day: {
      kind: 'sum-of-place-points',
      placePoints: placePoints(groups.length),
      weights: {},
      meanOfThosePresent: false,
    },
  };
  return addGroups(groups)(empty);
}

/** The last of all gets one point. */
const placePoints = (groups: number): readonly number[] => Array.from({ length: groups }, (_, k) => groups - k);
