// What is asked about a build beside its report: what happens without a piece, and which tilt it bears towards one side.

import type { Attempt, Challenge, ClassRecord, Group, Statics } from '@cairnmark/engine';
import { stabilityQuestion } from '@cairnmark/engine';
import type { StabilityQuestion, Vec2 } from '@cairnmark/geometry';
import { tiltTowards, withoutPiece } from '@cairnmark/geometry';
import type { ClassWords, TerminalWords } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';
import type { Outcome } from './read-files.ts';
import { section } from './section.ts';

/** As typed; null when not asked. */
interface Asked {
  readonly without: string | null;
  readonly tilt: string | null;
}

/** Whose build it is. The report on it was given, so that its names and its layout are in order. */
interface About {
  readonly attempt: Attempt;
  readonly challenge: Challenge;
  readonly group: Group;
  readonly record: ClassRecord;
  readonly statics: Statics;
}

/** The answers as lines under their headings, or what cannot be asked. */
export function furtherQuestions(
  { without, tilt }: Asked,
  { attempt, challenge, group, record, statics }: About,
  words: TerminalWords,
): Outcome<readonly string[]> {
  if (without === null && tilt === null) return { ok: true, value: [] };
  const question = stabilityQuestion(attempt, challenge, group, statics);
  if (question === null) return { ok: false, faults: [words.say('measure.no-drawing')] };
  const classWords = words.inClass(readerOf(challenge, record.groups));
  const taken = without === null ? NOTHING : piecesTaken(without, question, classWords, words);
  const tilted = tilt === null ? NOTHING : tiltOf(tilt, question, classWords, words);
  if (taken.ok && tilted.ok) return { ok: true, value: [...taken.value, ...tilted.value] };
  return { ok: false, faults: [taken, tilted].flatMap((outcome) => (outcome.ok ? [] : outcome.faults)) };
}

const NOTHING = { ok: true, value: [] } as const;

function piecesTaken(
  typed: string,
  question: StabilityQuestion,
  classWords: ClassWords,
  words: TerminalWords,
): Outcome<readonly string[]> {
  const kinds = question.pieces.map(({ kind }) => kind);
  const asked = kinds.map((_, piece) => piece).filter((piece) => typed === 'all' || typed === String(piece + 1));
  if (asked.length === 0) {
    return { ok: false, faults: [words.say('usage.piece-unknown', { piece: typed, count: String(kinds.length) })] };
  }
  const lines = asked.flatMap((piece) => {
    const answer = withoutPiece(question, piece);
    return answer.ok ? [classWords.withoutPiece(answer.value, piece, kinds)] : [];
  });
  return { ok: true, value: section(`${words.say('measure.without')}:`, lines) };
}

function tiltOf(
  typed: string,
  question: StabilityQuestion,
  classWords: ClassWords,
  words: TerminalWords,
): Outcome<readonly string[]> {
  const degrees = SIDES[typed] ?? Number(typed);
  if (typed.trim() === '' || !Number.isFinite(degrees)) {
    return { ok: false, faults: [words.say('usage.side-unknown', { side: typed })] };
  }
  const answer = tiltTowards(question, unitAt((degrees * Math.PI) / 180));
  const lines = answer.ok ? [classWords.tiltTowards(answer.value)] : [];
  return { ok: true, value: section(`${words.say('measure.tilt')}:`, lines) };
}

/** Degrees, counter-clockwise from the right as seen from above. */
const SIDES: Readonly<Record<string, number>> = { right: 0, back: 90, left: 180, front: 270 };

const unitAt = (angleRad: number): Vec2 => [Math.cos(angleRad), Math.sin(angleRad)];
