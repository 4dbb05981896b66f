// The only home of sentences: codes and numbers in, sentences out, in English and Spanish.

export type { ClassWords } from './class-words.ts';
export type { ClassNames } from './day.ts';
export type { CautionId, CountedThing, IssueCode, MeasureName, NameTables } from './keys.ts';
export type { Reader } from './reader.ts';
export type { StabilityWords } from './stability.ts';
export type { Side, Sides } from './why.ts';
export type { Language, Words } from './words.ts';
export { LANGUAGES, wordsFor } from './words.ts';
