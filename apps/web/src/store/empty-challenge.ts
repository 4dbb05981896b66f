// A challenge without points and rules, to be filled in.

import type { Challenge } from '@cairnmark/engine';
import { presetOf, readyChallengeFor } from '@cairnmark/engine';
import { unitsOf, withRuler } from './rule-settings.ts';

/** With the kit, the grade and the ruler of another one; it ranks by height until somebody says otherwise. */
export function emptyChallenge(name: string, { kit, gradePreset, ruler, own }: Challenge): Challenge {
  const started = readyChallengeFor('tallest', name, kit, null, { grade: gradePreset, units: unitsOf({ ruler }) });
  return {
    ...withRuler(ruler)(started),
    own: { ...started.own, pi: own.pi },
    hidden: presetOf(gradePreset).hidden.filter((measure) => measure !== started.ranking.first.by),
    points: [],
    requirements: [],
    labels: [],
  };
}
