// check: what is wrong with each file, or that it is fine. The builds of a class are put together, too: pieces that run
// into each other are seen only then.

import { scoreClass, USUAL_LIMITS } from '@cairnmark/engine';
import type { Words } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import type { FileRecord, Outcome } from '../read-files.ts';
import { faultLine, readFile } from '../read-files.ts';
import { complain, refuse, tell } from '../speak.ts';

export function check({ command, rest }: Call, words: Words, io: Io): ExitCode {
  if (rest.length === 0) {
    complain(io, words.say('usage.no-file', { help: helpAbout(command) }));
    return NOT_UNDERSTOOD;
  }
  let outcome: ExitCode = WELL;
  for (const file of rest) {
    const checked = checkedFile(file, words, io);
    if (checked.ok)
      tell(io, words.say('file.fine', { file, format: words.names.formats[checked.value.decoded.format] }));
    else outcome = refuse(io, checked.faults);
  }
  return outcome;
}

function checkedFile(file: string, words: Words, io: Io): Outcome<FileRecord> {
  const read = readFile(file, words, io);
  if (!read.ok || read.value.decoded.format !== 'class') return read;
  const scored = scoreClass(read.value.decoded.value, { solver: null, limits: USUAL_LIMITS });
  return scored.ok ? read : { ok: false, faults: scored.issues.map((issue) => faultLine(file, issue, words)) };
}
