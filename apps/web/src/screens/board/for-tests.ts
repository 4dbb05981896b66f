// For tests: the scene of a challenge of a class, in English, with the class's own ruler.

import type { ClassRecord, ClassScore } from '@cairnmark/engine';
import { scoreClass, USUAL_LIMITS, unitOf } from '@cairnmark/engine';
import { noTabs, TILT_BANDS } from '@cairnmark/geometry';
import { cardWords, classReader, wordsFor } from '@cairnmark/words';
import { shownRuler } from '../../app/shown-ruler.ts';
import type { Units } from '../../store/device.ts';
import type { BoardLine } from './lines.ts';
import { boardLines } from './lines.ts';
import type { Scene } from './scene.ts';

export function scored(record: ClassRecord): ClassScore {
  const score = scoreClass(record, { solver: null, limits: USUAL_LIMITS, tabsOf: noTabs });
  if (!score.ok) throw new RangeError(`refused: ${JSON.stringify(score.issues)}`);
  return score.value;
}

export interface Staged {
  readonly scene: Scene;
  readonly lines: readonly BoardLine[];
}

/** The class with this challenge alone: scoring the others takes seconds. */
export function staged(whole: ClassRecord, id: string, units: Units | null = null): Staged {
  const challenge = whole.challenges.find((one) => one.id === id);
  if (challenge === undefined) throw new RangeError(`no challenge ${id}`);
  const record: ClassRecord = {
    ...whole,
    challenges: [challenge],
    attempts: whole.attempts.filter((one) => one.challenge === id),
    supplies: Object.fromEntries(Object.entries(whole.supplies).filter(([of]) => of === id)),
    day: { ...whole.day, weights: {} },
  };
  const score = scored(record);
  const words = wordsFor('en');
  const ruler = shownRuler(challenge.ruler, units);
  const inClass = words.inClass(classReader(challenge, record.groups, { ruler, bands: TILT_BANDS, unitOf }));
  const scene = { record, score, challenge, words, ruler, inClass, screen: cardWords('en') };
  return { scene, lines: boardLines(score, challenge) };
}
