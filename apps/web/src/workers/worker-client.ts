// The page's side of the worker. Of questions on one channel only the newest is answered; the others end with null, also one
// that has been at work for long when the newer one is asked. Cancelling ends the worker, and the next question starts a
// fresh one.

export type Progress = (done: number, most: number) => void;

/** What a worker can be asked, by topic. Plain data both ways. */
export type Topics<Q> = { readonly [T in keyof Q]: { readonly ask: unknown; readonly answer: unknown } };

export type Question<Q extends Topics<Q>> = {
  [T in keyof Q]: { readonly number: number; readonly topic: T; readonly ask: Q[T]['ask'] };
}[keyof Q];

/** `done`: of the steps so far, while a long question is worked out; the answer comes last. */
export type Message<Q extends Topics<Q>> =
  | { readonly number: number; readonly done: number; readonly most: number }
  | { readonly number: number; readonly answer: Q[keyof Q]['answer'] }
  | { readonly number: number; readonly failed: string };

export interface WorkerClient<Q extends Topics<Q>> {
  /** null: a newer question took its place, or it was cancelled. Rejects when the worker fails. */
  ask<T extends keyof Q>(
    channel: string,
    topic: T,
    ask: Q[T]['ask'],
    progress: Progress,
  ): Promise<Q[T]['answer'] | null>;
  /** Gives up what is being worked out now. */
  cancel(): void;
}

interface Waiting<Q extends Topics<Q>> {
  readonly question: Question<Q>;
  readonly channel: string;
  readonly progress: Progress;
  readonly settle: (answer: Q[keyof Q]['answer'] | null) => void;
  readonly fail: (reason: Error) => void;
}

/** A channel for what no screen shows by itself, such as the tries of others that a place hangs on: it comes last. */
export const behind = (name: string): string => `${BEHIND}${name}`;

const BEHIND = 'behind:';
const isBehind = (channel: string): boolean => channel.startsWith(BEHIND);
const isNotShown = ({ channel }: { readonly channel: string }): boolean => isBehind(channel);
const isShown = (one: { readonly channel: string }): boolean => !isNotShown(one);

/** ms. For a worker that remembers: a fresh one would lose what this one knows. */
export const LONG_MS = 5000;

/**
 * `now`: a clock that only goes forwards, ms. `longMs`: a newer question ends one of its channel that has been at work for
 * longer, and waits for any other; 0 for a worker that remembers nothing.
 */
export function workerClient<Q extends Topics<Q>>(
  start: () => Worker,
  now: () => number,
  longMs: number,
): WorkerClient<Q> {
  type Asked = Waiting<Q>;
  let worker: Worker | null = null;
  let working: Asked | null = null;
  let sinceMs = 0;
  let queue: readonly Asked[] = [];
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
  const finish = (how: (one: Asked) => void): void => {
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
    fresh.onmessage = ({ data }: MessageEvent<Message<Q>>) => {
      if (data.number !== working?.question.number) return;
      if ('done' in data) working.progress(data.done, data.most);
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
    ask: <T extends keyof Q>(channel: string, topic: T, ask: Q[T]['ask'], progress: Progress) =>
      new Promise<Q[T]['answer'] | null>((resolve, fail) => {
        last += 1;
        const question: Question<Q> = { number: last, topic, ask };
        const settle = resolve as Asked['settle'];
        for (const overtaken of queue.filter((one) => one.channel === channel)) overtaken.settle(null);
        const others = queue.filter((one) => one.channel !== channel);
        const mine = { question, channel, progress, settle, fail };
        queue = isBehind(channel) ? [...others, mine] : [...others.filter(isShown), mine, ...others.filter(isNotShown)];
        if (working?.channel === channel && now() - sinceMs > longMs) giveUp();
        else next();
      }),
    cancel: giveUp,
  };
}
