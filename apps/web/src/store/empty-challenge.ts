// A challenge without points and rules, to be filled in.

import type { Challenge } from '@cairnmark/engine';
import { presetOf, readyChallenge } from '@cairnmark/engine';

/** With the kit, the grade and the ruler of another one; it ranks by height until somebody says otherwise. */
export function emptyChallenge(name: string, { kit, gradePreset, ruler, own }: Challenge): Challenge {
  const started = readyChallenge('tallest', name, kit, null);
  return {
    ...started,
    gradePreset,
    ruler,
    own: { ...started.own, pi: own.pi },
    hidden: presetOf(gradePreset).hidden.filter((measure) => measure !== started.ranking.first.by),
    points: [],
    requirements: [],
    labels: [],
  };
}
