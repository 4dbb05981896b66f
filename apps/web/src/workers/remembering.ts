// An engine client that remembers the report of every try for as long as the try is in use: records are never changed in
// place, so the same objects have the same report. Going from screen to screen, or ranking a class after one tap, asks
// the worker for nothing twice.

import { needsSolver } from '@cairnmark/engine';
import type { EngineClient } from './engine-client.ts';
import type { Build, Questions } from './questions.ts';

type ReportAnswer = Questions['report']['answer'];

interface Remembered {
  readonly of: Build;
  readonly answer: ReportAnswer;
}

export function remembering(client: EngineClient): EngineClient {
  const known = new WeakMap<Build['attempt'], Remembered>();
  const ask: EngineClient['ask'] = async (channel, topic, question, progress) => {
    if (topic !== 'report') return client.ask(channel, topic, question, progress);
    const build = question as Build;
    const remembered = known.get(build.attempt);
    if (remembered !== undefined && isSame(remembered.of, build)) return remembered.answer;
    const answer = await client.ask(channel, 'report', build, progress);
    if (answer !== null && isWhole(answer)) known.set(build.attempt, { of: build, answer });
    return answer;
  };
  return { ask, cancel: client.cancel };
}

/** What the large solver would have said is asked for again: the network may be back. */
const isWhole = (answer: ReportAnswer): boolean => !answer.ok || !needsSolver(answer.value);

const isSame = (one: Build, other: Build): boolean =>
  one.challenge === other.challenge && one.group === other.group && one.events === other.events;
