// One call from its words to its exit code.

import type { TerminalWords } from '@cairnmark/words';
import type { Call, CommandName } from './call.ts';
import { readCall } from './call.ts';
import { best } from './commands/best.ts';
import { check } from './commands/check.ts';
import { even } from './commands/even.ts';
import { favour } from './commands/favour.ts';
import { help } from './commands/help.ts';
import { measure } from './commands/measure.ts';
import { print } from './commands/print.ts';
import { ready } from './commands/ready.ts';
import { score } from './commands/score.ts';
import { solids } from './commands/solids.ts';
import { trace } from './commands/trace.ts';
import { why } from './commands/why.ts';
import type { ExitCode } from './exit.ts';
import { NOT_UNDERSTOOD } from './exit.ts';
import type { Io } from './io.ts';
import { complain } from './speak.ts';

type Command = (call: Call, words: TerminalWords, io: Io) => ExitCode | Promise<ExitCode>;

const TABLE: Readonly<Record<CommandName, Command>> = {
  score,
  measure,
  why,
  ready,
  favour,
  even,
  print,
  trace,
  best,
  solids,
  check,
  help,
};

/** `args`: the call without the program's name. */
export async function run(args: readonly string[], io: Io): Promise<ExitCode> {
  const { words, call } = readCall(args);
  if (typeof call !== 'string') return await TABLE[call.command](call, words, io);
  complain(io, call);
  return NOT_UNDERSTOOD;
}
