// What every part of a challenge's board needs: the record and the scores that are shown, and the words for them.

import type { Challenge, ClassRecord, ClassScore } from '@cairnmark/engine';
import type { CardWords } from '@cairnmark/words';
import type { BuildWords } from '../../app/use-build-words.ts';

/** `record` and `score` go together: of now, or of the moment of freezing. */
export interface Shown {
  readonly record: ClassRecord;
  readonly score: ClassScore;
}

export interface Scene extends Shown, BuildWords {
  readonly challenge: Challenge;
  readonly screen: CardWords;
}

export const challengeName = ({ challenges }: ClassRecord, challenge: string): string =>
  challenges.find(({ id }) => id === challenge)?.name ?? challenge;

export const groupName = ({ groups }: ClassRecord, group: string): string =>
  groups.find(({ id }) => id === group)?.name ?? group;
