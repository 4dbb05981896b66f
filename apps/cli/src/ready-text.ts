// The challenges that are ready to run, for people: each with its grades, labels, rules and points, or one with its board.

import type { Challenge, ClassRecord, ClassScore, Kit } from '@cairnmark/engine';
import { READY_IDS, readyChallenge } from '@cairnmark/engine';
import type { TerminalWords } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';
import { scoreText } from './score-text.ts';

export function readyList(kit: Kit, pieces: number | null, words: TerminalWords): string {
  const parts = READY_IDS.map((id) => {
    const challenge = readyChallenge(id, words.names.ready[id], kit, pieces);
    const title = words.say('ready.title', { name: challenge.name, id });
    const lines = [
      ...describing(challenge, words),
      words.say('score.order', { order: classWordsOf(challenge, words).order(challenge.ranking) }),
    ];
    return [title, ...lines.map((line) => `  ${line}`)].join('\n');
  });
  return parts.join('\n\n');
}

interface Refiled {
  /** Of the one challenge that is ready to run. */
  readonly record: ClassRecord;
  readonly score: ClassScore;
  readonly leftOut: number;
  readonly rows: boolean;
}

export function readyBoard({ record, score, leftOut, rows }: Refiled, words: TerminalWords): string {
  const described = record.challenges.flatMap((challenge) => describing(challenge, words));
  return [scoreText(record, score, rows, words), '', ...described, ...leftOutLine(leftOut, words)].join('\n');
}

function describing(challenge: Challenge, words: TerminalWords): readonly string[] {
  const classWords = classWordsOf(challenge, words);
  const { gradePreset, labels, requirements, points, fallen } = challenge;
  const rules = requirements.map(classWords.statedRule).join('; ');
  const rows = points.map(classWords.statedRow).join('; ');
  return [
    words.say('ready.grades', { grades: words.names.grades[gradePreset] }),
    ...(labels.length > 0 ? [words.say('ready.labels', { labels: labels.join(', ') })] : []),
    ...(rules === '' ? [] : [words.say('ready.rules', { rules })]),
    ...(rows === '' ? [] : [words.say('ready.points', { rows })]),
    classWords.falling(fallen),
  ];
}

const classWordsOf = (challenge: Challenge, words: TerminalWords) => words.inClass(readerOf(challenge, []));

function leftOutLine(count: number, words: TerminalWords): readonly string[] {
  if (count === 0) return [];
  return [count === 1 ? words.say('ready.left-out.one') : words.say('ready.left-out', { count })];
}
