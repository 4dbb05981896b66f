// solids: the catalogue, with the sizes that each solid asks for, its counts, and the sides it can rest on.

import { CATALOGUE } from '@cairnmark/geometry';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import { solidText } from '../solid-text.ts';
import { complain, tell } from '../speak.ts';

export function solids({ command, rest }: Call, words: TerminalWords, io: Io): ExitCode {
  if (rest.length > 0) {
    complain(io, words.say('usage.no-files-here', { help: helpAbout(command) }));
    return NOT_UNDERSTOOD;
  }
  const texts = Object.values(CATALOGUE).map((definition) => solidText(definition, words));
  const key = [words.say('working.digits'), words.say('working.letters')].join('\n');
  tell(io, [...texts, key].join('\n\n'));
  return WELL;
}
