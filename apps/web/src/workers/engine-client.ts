// The page's side of the worker. Of questions on one channel only the newest is answered; the others end with null, also one
// at work that takes long. Cancelling ends the worker, and the next question starts a fresh one.

import type { Message, Question, Questions, Topic } from './questions.ts';

export type Progress = (solved: number, most: number) => void;

export interface EngineClient {
  /** null: a newer question took its place, or it was cancelled. Rejects when the worker fails. */
  ask<T extends Topic>(
    channel: string,
    topic: T,
    ask: Questions[T]['ask'],
    progress: Progress,
  ): Promise<Questions[T]['answer'] | null>;
  /** Gives up what is being worked out now. */
  cancel(): void;
}

interface Waiting {
  readonly question: Question;
  readonly channel: string;
  readonly progress: Progress;
  readonly settle: (answer: Questions[Topic]['answer'] | null) => void;
  readonly fail: (reason: Error) => void;
}

/** A channel for what no screen shows by itself, such as the tries of others that a place hangs on: it comes last. */
export const behind = (name: string): string => `${BEHIND}${name}`;

const BEHIND = 'behind:';
const isBehind = (channel: string): boolean => channel.startsWith(BEHIND);
const isNotShown = ({ channel }: Waiting): boolean => isBehind(channel);
const isShown = (one: Waiting): boolean => !isNotShown(one);

/** A newer question waits this long for one of its channel that is at work: a fresh worker would lose what this one knows. */
export const LONG_MS = 5000;

/** `now`: a clock that only goes forwards, ms. */
export function engineClient(start: () => Worker, now: () => number): EngineClient {
  let worker: Worker | null = null;
  let working: Waiting | null = null;
  let sinceMs = 0;
  let queue: readonly Waiting[] = [];
  let last = 0;

  const next = (): void => {
    const [first, ...others] = queue;
    if (working !== null || first === undefined) return;
    queue = others;
    working = first;
    sinceMs = now();
    try {
      worker ??= listening(start());
      worker.postMessage(first.question);
    } catch (error) {
      // No worker, or one that cannot take the question: whoever asked is told, and the next one is not held up by it.
      finish((one) => one.fail(error instanceof Error ? error : new Error(String(error))));
    }
  };
  const finish = (how: (one: Waiting) => void): void => {
    const done = working;
    working = null;
    if (done !== null) how(done);
    next();
  };
  const giveUp = (): void => {
    worker?.terminate();
    worker = null;
    finish((one) => one.settle(null));
  };
  const listening = (fresh: Worker): Worker => {
    fresh.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.number !== working?.question.number) return;
      if ('solved' in data) working.progress(data.solved, data.most);
      else if ('failed' in data) finish((one) => one.fail(new Error(data.failed)));
      else finish((one) => one.settle(data.answer));
    };
    fresh.onerror = ({ message }) => {
      worker = null;
      fresh.terminate();
      finish((one) => one.fail(new Error(message)));
    };
    return fresh;
  };

  return {
    ask: <T extends Topic>(channel: string, topic: T, ask: Questions[T]['ask'], progress: Progress) =>
      new Promise<Questions[T]['answer'] | null>((resolve, fail) => {
        last += 1;
        const question = { number: last, topic, ask } as Question;
        const settle = resolve as Waiting['settle'];
        for (const overtaken of queue.filter((one) => one.channel === channel)) overtaken.settle(null);
        const others = queue.filter((one) => one.channel !== channel);
        const mine = { question, channel, progress, settle, fail };
        queue = isBehind(channel) ? [...others, mine] : [...others.filter(isShown), mine, ...others.filter(isNotShown)];
        if (working?.channel === channel && now() - sinceMs > LONG_MS) giveUp();
        else next();
      }),
    cancel: giveUp,
  };
}
