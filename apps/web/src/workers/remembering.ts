// An engine client that remembers the report of every try for as long as the try is in use: records are never changed in
// place, so the same objects have the same report. Going from screen to screen, or ranking a class after one tap, asks
// the worker for nothing twice; and a screen that asks for what is at work already waits for that.

import { needsSolver } from '@cairnmark/engine';
import type { Build, EngineClient, Questions } from './questions.ts';
import type { Progress } from './worker-client.ts';

type ReportAnswer = Questions['report']['answer'];

interface Remembered {
  readonly of: Build;
  readonly answer: ReportAnswer;
}

interface AtWork {
  readonly of: Build;
  readonly answer: Promise<ReportAnswer | null>;
  /** Tells how far it is, at once and whenever it goes on. */
  listen(progress: Progress): void;
}

export function remembering(client: EngineClient): EngineClient {
  const known = new WeakMap<Build['attempt'], Remembered>();
  const atWork = new WeakMap<Build['attempt'], AtWork>();
  const begin = (channel: string, build: Build): AtWork => {
    const listeners = new Set<Progress>();
    let last: Parameters<Progress> | null = null;
    const answer = client.ask(channel, 'report', build, (...far) => {
      last = far;
      for (const progress of listeners) progress(...far);
    });
    const listen = (progress: Progress): void => {
      listeners.add(progress);
      if (last !== null) progress(...last);
    };
    const begun = { of: build, answer, listen };
    atWork.set(build.attempt, begun);
    const done = (): void => {
      if (atWork.get(build.attempt) === begun) atWork.delete(build.attempt);
    };
    answer.then((report) => {
      done();
      if (report !== null && isWhole(report)) known.set(build.attempt, { of: build, answer: report });
    }, done);
    return begun;
  };
  const ask: EngineClient['ask'] = async (channel, topic, question, progress) => {
    if (topic !== 'report') return client.ask(channel, topic, question, progress);
    const build = question as Build;
    const remembered = known.get(build.attempt);
    if (remembered !== undefined && isSame(remembered.of, build)) return remembered.answer;
    const before = atWork.get(build.attempt);
    const { answer, listen } = before !== undefined && isSame(before.of, build) ? before : begin(channel, build);
    listen(progress);
    return answer;
  };
  return { ask, cancel: client.cancel };
}

/** What the large solver would have said is asked for again: the network may be back. */
const isWhole = (answer: ReportAnswer): boolean => !answer.ok || !needsSolver(answer.value);

const isSame = (one: Build, other: Build): boolean =>
  one.challenge === other.challenge && one.group === other.group && one.events === other.events;
