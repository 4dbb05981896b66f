// The best possible build of one challenge as text, or of several as data.

import type { ClassRecord } from '@cairnmark/engine';
import type { FrontAnswer } from '@cairnmark/scoring';
import type { ClassWords, Language, TalkWords, TerminalWords } from '@cairnmark/words';
import { bestSentences, talkWords } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';
import type { WorkedOut } from './commands/best.ts';
import { tableText } from './table.ts';

export function bestText(
  { challenge, plan, answer, front }: WorkedOut,
  record: ClassRecord,
  language: Language,
  words: TerminalWords,
): string {
  const inClass = words.inClass(readerOf(challenge, record.groups));
  const talk = talkWords(language);
  const lines = bestSentences(plan, answer, challenge, { words, inClass, talk });
  return [challenge.name, ...lines.map((line) => `  ${line}`), ...frontLines(front, inClass, talk)].join('\n');
}

/** Only where there is something to choose: one tower that is tallest and narrowest needs no table. */
function frontLines(front: FrontAnswer | null, inClass: ClassWords, talk: TalkWords): readonly string[] {
  if (front === null || front.points.length < 2 || !front.finished) return [];
  const rows = front.points.map(({ baseMm2, heightMm }) => [
    `    ${inClass.amount('base-area', baseMm2, 0)}`,
    inClass.amount('height', heightMm, 0),
  ]);
  const table = tableText([[`    ${talk.say('best.front-base')}`, talk.say('best.front-height')], ...rows], [1]);
  return [`  ${talk.say('best.front')}`, table.trimEnd()];
}

/** Lengths mm, areas mm2, pushes as the tangent of the tilt. */
export function bestJson({ name, invented }: ClassRecord, all: readonly WorkedOut[]): string {
  const challenges = all.map(({ challenge, plan, answer, front }) => ({
    challenge: challenge.id,
    goal: plan?.task.goal.kind ?? null,
    answer,
    leftOut: plan?.leftOut ?? null,
    takenAsMust: plan?.takenAsMust ?? null,
    front:
      front === null
        ? null
        : { ...front, points: front.points.map(({ baseMm2, heightMm }) => ({ baseMm2, heightMm })) },
  }));
  return JSON.stringify({ class: name, invented, challenges }, null, 2);
}
