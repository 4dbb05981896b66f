// What a call about the points lab is about: a challenge, its kit as the lab sees it, the rows that may count, and the words.

import type { Challenge, ClassRecord, LabKit } from '@cairnmark/engine';
import { isCountedRow, labKit, todaysRates, withRows } from '@cairnmark/engine';
import type { CountingConvention } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { LabData } from '@cairnmark/scoring';
import type { ClassWords, TalkWords, TerminalWords } from '@cairnmark/words';
import { talkWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import { readerOf } from '../class-reader.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD } from '../exit.ts';
import { givenChallenge } from '../given-challenge.ts';
import type { Io } from '../io.ts';
import { complain, refuse } from '../speak.ts';
import type { FairOptions } from './options.ts';
import { readFairOptions } from './options.ts';

export interface TerminalLab {
  readonly record: ClassRecord;
  readonly challenge: Challenge;
  readonly counting: CountingConvention;
  readonly kit: LabKit;
  /** The rows that may count, and those that could be offered. */
  readonly data: LabData;
  readonly further: LabData;
  /** Of all rows of the kit. */
  readonly today: readonly number[];
  readonly options: FairOptions;
  readonly words: TerminalWords;
  readonly inClass: ClassWords;
  readonly say: TalkWords['say'];
}

/** The lab, or how the command ends without one; what is wrong has been told then. */
export function terminalLab(call: Call, words: TerminalWords, io: Io): TerminalLab | ExitCode {
  const { command, rest, challenge: asked, form, language, fair } = call;
  const help = helpAbout(command);
  const { options, faults } = readFairOptions(fair, words);
  const [file = null, ...more] = rest;
  const wrong = [
    ...(more.length === 0 ? [] : [words.say('usage.one-file', { help })]),
    ...(form === 'csv' ? [words.say('usage.option-value', { name: '--as', value: form, known: 'table, json' })] : []),
    ...faults,
  ];
  if (wrong.length > 0) return notUnderstood(wrong, io);
  const given = givenChallenge({ file, challenge: asked, language }, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, challenge } = given.value;
  const counting = options.counting ?? challenge.counting;
  const kit = labKit(challenge, counting, rulerOf(challenge.ruler), {});
  if (kit.kinds.length < 2) return refuse(io, [words.say('usage.few-kinds')]);
  const ids = kit.rows.map(({ id }) => id);
  const strange = options.count?.filter((name) => !ids.some((id) => id === name)) ?? [];
  if (strange.length > 0) {
    const known = ids.join(', ');
    return notUnderstood(
      strange.map((name) => words.say('usage.count-unknown', { name, known })),
      io,
    );
  }
  const counts = options.count ?? kit.rows.filter(isCountedRow).map(({ id }) => id);
  return {
    record,
    challenge,
    counting,
    kit,
    data: withRows(kit.data, (row) => counts.includes(row)),
    further: withRows(kit.data, (row) => !counts.includes(row) && row !== 'pieces'),
    today: todaysRates(challenge, kit.rows).rates,
    options,
    words,
    inClass: words.inClass(readerOf(challenge, record.groups)),
    say: talkWords(language).say,
  };
}

export function notUnderstood(faults: readonly string[], io: Io): ExitCode {
  for (const fault of faults) complain(io, fault);
  return NOT_UNDERSTOOD;
}
