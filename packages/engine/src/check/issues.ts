// What can be wrong with a challenge, an attempt or a class, beyond the shape of the file: names that point nowhere,
// numbers that make no sense. Paths start at the argument or the record that was handed in.

import type { Issue, SizeIssueCode, StackIssueCode } from '@cairnmark/geometry';

export type EngineIssueCode =
  | 'id-twice' // details: id
  | 'group-unknown' // details: group
  | 'challenge-unknown' // details: challenge
  | 'kind-unknown' // details: kind
  | 'criterion-unknown' // details: criterion
  | 'requirement-unknown' // details: requirement
  | 'measure-unknown' // details: measure
  | 'height-source-missing' // the challenge names no height that counts
  | 'number-out-of-range' // details: value, least, most
  | 'cap-below-floor' // details: cap, floor
  | 'surface-unknown' // details: surface
  | 'friction-twice' // details: first, second
  | 'supply-not-played' // details: challenge. Strokes of a supply list where the challenge has no supply game
  | 'supply-missing' // a rule or a row asks for what was earned, and the challenge has no supply game
  | 'kinds-missing' // a rule on kinds names none that may be used
  | 'own-twice' // details: measure
  | 'stock-exceeded' // details: piece, count, left
  | 'more-than-the-group-has' // details: piece, count, has
  | 'mark-twice' // details: judge, criterion
  | 'not-a-time';

/** What is wrong with a challenge, an attempt or a class, or with the build that an attempt lays out. */
export type EngineIssue = Issue<EngineIssueCode | StackIssueCode | SizeIssueCode>;
