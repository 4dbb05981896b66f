// help: all commands, or one of them.

import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { COMMANDS } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import { complain } from '../speak.ts';

export function help({ rest: [name = 'help'] }: Call, words: TerminalWords, io: Io): ExitCode {
  const command = COMMANDS.find((candidate) => candidate === name);
  if (command === undefined) {
    complain(io, words.say('usage.command-unknown', { name, known: COMMANDS.join(', ') }));
    return NOT_UNDERSTOOD;
  }
  if (command === 'help') io.out(`${words.say('help')}\n${cautionsText(words)}`);
  else io.out(words.say(`help.${command}`));
  return WELL;
}

function cautionsText(words: TerminalWords): string {
  const lines = Object.values(words.cautions).map((caution) => `  ${caution}\n`);
  return `${words.say('help.cautions')}:\n${lines.join('')}`;
}
