// why: what separates the builds of two groups, challenge by challenge, or the last two tries of one group.

import { scoreClass, someNeedSolver } from '@cairnmark/engine';
import type { TerminalWords } from '@cairnmark/words';
import { boardsOf } from '../boards.ts';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import type { Named } from '../named.ts';
import { filesAndNames, knownNames, namedAs } from '../named.ts';
import { complain, refuse, tell } from '../speak.ts';
import { betweenGroups, betweenTries } from '../why-text.ts';
import { withSolver } from '../with-solver.ts';

export async function why({ command, rest, challenge: asked }: Call, words: TerminalWords, io: Io): Promise<ExitCode> {
  const { files, names } = filesAndNames(rest);
  const [first, second, ...more] = names;
  if (first === undefined || more.length > 0 || first === second) {
    complain(io, words.say('usage.group-which', { help: helpAbout(command) }));
    return NOT_UNDERSTOOD;
  }
  const given = givenClass(files, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, faultLine } = given.value;
  const faults = [
    ...names.flatMap((name) => unknown('usage.group-unknown', name, record.groups, words)),
    ...(asked === null ? [] : unknown('usage.challenge-unknown', asked, record.challenges, words)),
  ];
  if (faults.length > 0) return refuse(io, faults);
  const { result } = await withSolver((statics) => scoreClass(record, statics), someNeedSolver, io);
  if (!result.ok) return refuse(io, result.issues.map(faultLine));
  const wanted = asked === null ? undefined : namedAs(record.challenges, asked)?.id;
  const boards = boardsOf(record, result.value, words).filter(
    ({ challenge }) => wanted === undefined || challenge.id === wanted,
  );
  const [one, other] = names.map((name) => namedAs(record.groups, name)?.id ?? name);
  const head = record.invented ? [words.say('score.invented')] : [];
  const text =
    other === undefined
      ? betweenTries(boards, one ?? first, record, words)
      : betweenGroups(boards, [one ?? first, other], record, words);
  tell(io, [...head, text].join('\n'));
  return WELL;
}

function unknown(
  code: 'usage.group-unknown' | 'usage.challenge-unknown',
  name: string,
  list: readonly Named[],
  words: TerminalWords,
): readonly string[] {
  return namedAs(list, name) === undefined ? [words.say(code, { name, known: knownNames(list) })] : [];
}
