// The formats that files are written in, with the record that each holds.

import type { Attempt, Challenge, ClassRecord, Kit, Report } from '@cairnmark/engine';
import { challengeIssues, classIssues, kitIssues } from '@cairnmark/engine';
import type { Codec } from './codec.ts';
import { codec } from './codec.ts';
import { attempt } from './schemas/attempt.ts';
import { challenge } from './schemas/challenge.ts';
import { classRecord } from './schemas/class-record.ts';
import { kit } from './schemas/kit.ts';
import { report } from './schemas/report.ts';

/** The record of each format. */
export interface Records {
  readonly kit: Kit;
  readonly challenge: Challenge;
  readonly attempt: Attempt;
  readonly class: ClassRecord;
  readonly report: Report;
}

export type Format = keyof Records;

/** A record with the format it was read from. */
export type Decoded<F extends Format = Format> = {
  [K in F]: { readonly format: K; readonly value: Records[K] };
}[F];

export const CODECS: { readonly [F in Format]: Codec<F, Records[F]> } = {
  kit: codec('kit', kit, (value) => kitIssues(value, [])),
  challenge: codec('challenge', challenge, (value) => challengeIssues(value, [])),
  // What an attempt or a report refers to stands in another file.
  attempt: codec('attempt', attempt, () => []),
  class: codec('class', classRecord, classIssues),
  report: codec('report', report, () => []),
};

export const FORMATS = Object.keys(CODECS) as readonly Format[];
