// score: ranks the groups of a class, challenge by challenge, and adds up the day.

import { scoreClass, someNeedSolver } from '@cairnmark/engine';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import { scoreCsv } from '../score-csv.ts';
import { scoreJson } from '../score-json.ts';
import { scoreText } from '../score-text.ts';
import { refuse, tell } from '../speak.ts';
import { withSolver } from '../with-solver.ts';

export async function score({ rest, form, rows }: Call, words: TerminalWords, io: Io): Promise<ExitCode> {
  const given = givenClass(rest, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, faultLine } = given.value;
  const { result } = await withSolver((statics) => scoreClass(record, statics), someNeedSolver, io);
  if (!result.ok) return refuse(io, result.issues.map(faultLine));
  if (form === 'json') io.out(scoreJson(record, result.value));
  else if (form === 'csv') io.out(scoreCsv(record, result.value, words));
  else tell(io, scoreText(record, result.value, rows, words));
  return WELL;
}
