// What every part of the record sheet works with.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { Person } from '../../parts/use-person.ts';

export interface SheetData {
  readonly record: ClassRecord;
  readonly challenge: Challenge;
  readonly words: BuildWords;
  readonly person: Person;
}
