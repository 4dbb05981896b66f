// ready: the challenges that are ready to run, or the builds of a class under one of them.

import type { ReadyId } from '@cairnmark/engine';
import { READY_IDS, scoreClass, someNeedSolver } from '@cairnmark/engine';
import type { Issue } from '@cairnmark/geometry';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import { filesAndNames } from '../named.ts';
import { readyBoard, readyList } from '../ready-text.ts';
import { refiled } from '../refiled.ts';
import { complain, refuse, tell } from '../speak.ts';
import { withSolver } from '../with-solver.ts';

export async function ready({ rest, rows, pieces: typed }: Call, words: TerminalWords, io: Io): Promise<ExitCode> {
  const { files, names } = filesAndNames(rest);
  const [name, ...more] = names;
  const id = READY_IDS.find((known) => known === name) ?? null;
  const pieces = typed === null ? null : wholeFrom1(typed);
  const isNoNumber = typed !== null && pieces === null;
  const strange = id === null ? name : more[0];
  const faults = [
    ...(strange === undefined
      ? []
      : [words.say('usage.ready-unknown', { name: strange, known: READY_IDS.join(', ') })]),
    ...(isNoNumber ? [words.say('usage.pieces-unknown', { pieces: typed })] : []),
  ];
  if (faults.length > 0) {
    for (const fault of faults) complain(io, fault);
    return NOT_UNDERSTOOD;
  }
  return await answer({ id, files, pieces, rows }, words, io);
}

interface Asked {
  /** null: all of them are listed. */
  readonly id: ReadyId | null;
  readonly files: readonly string[];
  /** null: as many as are usual for the challenge. */
  readonly pieces: number | null;
  readonly rows: boolean;
}

async function answer({ id, files, pieces, rows }: Asked, words: TerminalWords, io: Io): Promise<ExitCode> {
  const given = givenClass(files, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, faultLine } = given.value;
  const [challenge] = record.challenges;
  if (challenge === undefined) return refuse(io, [words.say('ready.no-kit')]);
  if (id === null) {
    tell(io, readyList(challenge.kit, pieces, words));
    return WELL;
  }
  const { record: under, indices, leftOut } = refiled(record, id, words.names.ready[id], challenge.kit, pieces);
  const { result } = await withSolver((statics) => scoreClass(under, statics), someNeedSolver, io);
  if (!result.ok)
    return refuse(
      io,
      result.issues.map((issue) => faultLine(inClass(issue, indices))),
    );
  tell(io, readyBoard({ record: under, score: result.value, leftOut, rows }, words));
  return WELL;
}

/** At the place of the attempt in the class; groups and the first kit stand where they stood. */
function inClass(issue: Issue, indices: readonly number[]): Issue {
  const [list, index, ...inside] = issue.path;
  if (list !== 'attempts' || typeof index !== 'number') return issue;
  return { ...issue, path: [list, indices[index] ?? index, ...inside] };
}

function wholeFrom1(typed: string): number | null {
  const pieces = Number(typed);
  return Number.isInteger(pieces) && pieces >= 1 ? pieces : null;
}
