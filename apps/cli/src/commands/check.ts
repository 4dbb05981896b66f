// check: what is wrong with each file, or that it is fine.

import type { Words } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import { readFile } from '../read-files.ts';
import { complain, refuse, tell } from '../speak.ts';

export function check({ command, rest }: Call, words: Words, io: Io): ExitCode {
  if (rest.length === 0) {
    complain(io, words.say('usage.no-file', { command }));
    return NOT_UNDERSTOOD;
  }
  let outcome: ExitCode = WELL;
  for (const file of rest) {
    const read = readFile(file, words, io);
    if (read.ok) {
      tell(io, words.say('file.fine', { file, format: read.value.decoded.format }));
    } else {
      outcome = refuse(io, read.faults);
    }
  }
  return outcome;
}
