// check: what is wrong with each file, or that it is fine. The builds of a class are put together, too: pieces that run
// into each other are seen only then.

import type { ClassRecord, ClassScore } from '@cairnmark/engine';
import { scoreClass, USUAL_LIMITS } from '@cairnmark/engine';
import { rememberedTabPaper } from '@cairnmark/nets';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import { readerOf } from '../class-reader.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import type { Outcome } from '../read-files.ts';
import { faultLine, readFile } from '../read-files.ts';
import { complain, refuse, tell } from '../speak.ts';

export function check({ command, rest }: Call, words: TerminalWords, io: Io): ExitCode {
  if (rest.length === 0) {
    complain(io, words.say('usage.no-file', { help: helpAbout(command) }));
    return NOT_UNDERSTOOD;
  }
  let outcome: ExitCode = WELL;
  for (const file of rest) {
    const checked = checkedFile(file, words, io);
    if (checked.ok) tell(io, checked.value.join('\n'));
    else outcome = refuse(io, checked.faults);
  }
  return outcome;
}

/** What is good to know of a file without a fault. */
function checkedFile(file: string, words: TerminalWords, io: Io): Outcome<readonly string[]> {
  const read = readFile(file, words, io);
  if (!read.ok) return read;
  const { decoded } = read.value;
  const fine = words.say('file.fine', { file, format: words.names.formats[decoded.format] });
  if (decoded.format !== 'class') return { ok: true, value: [fine] };
  const scored = scoreClass(decoded.value, { solver: null, limits: USUAL_LIMITS, tabsOf: rememberedTabPaper() });
  if (!scored.ok) return { ok: false, faults: scored.issues.map((issue) => faultLine(file, issue, words)) };
  return { ok: true, value: [fine, ...beyondTheKit(file, decoded.value, scored.value, words)] };
}

/** Builds with more pieces than the kit has: no fault of the file, but more likely a slip than a build. */
function beyondTheKit(
  file: string,
  record: ClassRecord,
  { reports }: ClassScore,
  words: TerminalWords,
): readonly string[] {
  return record.challenges.flatMap((challenge) => {
    const classWords = words.inClass(readerOf(challenge, record.groups));
    return (reports.get(challenge.id) ?? []).flatMap(({ attempt, stockBreaches }) =>
      stockBreaches.map((breach) =>
        words.say('file.beyond-the-kit', { file, attempt, sentence: classWords.stock(breach) }),
      ),
    );
  });
}
