import { describe, expect, it } from 'vitest';
import { attempt, challenge, group } from '../../../../tests/reference/small-class.ts';
import type { Build, EngineMessage as Message, EngineQuestion as Question, Questions } from './questions.ts';
import { behind, LONG_MS, workerClient } from './worker-client.ts';

const BUILD: Build = { attempt: attempt(), challenge: challenge(), group: group('terns'), events: [] };
const none = (): void => undefined;

/** A worker that answers when it is told to, and may refuse to be started or to take a question. */
class FakeWorker {
  onmessage: ((event: { data: Message }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  readonly taken: Question[] = [];
  ended = false;
  refuses = false;
  postMessage(question: Question): void {
    if (this.refuses) throw new DOMException('', 'DataCloneError');
    this.taken.push(question);
  }
  terminate(): void {
    this.ended = true;
  }
  /** Answers the question that was taken last. */
  answer(): void {
    const number = this.taken.at(-1)?.number ?? 0;
    this.onmessage?.({ data: { number, answer: null } });
  }
}

/** A client with its workers; the first `broken` of them do not start. */
function client({ broken = 0, longMs = LONG_MS } = {}) {
  const workers: FakeWorker[] = [];
  const clock = { ms: 0 };
  let starts = 0;
  const start = (): Worker => {
    starts += 1;
    if (starts <= broken) throw new DOMException('', 'SecurityError');
    const fresh = new FakeWorker();
    workers.push(fresh);
    return fresh as unknown as Worker;
  };
  const engine = workerClient<Questions>(start, () => clock.ms, longMs);
  const ask = (channel: string) => engine.ask(channel, 'tilt', { ...BUILD, towardsRad: 0 }, none);
  return { engine, ask, workers, clock };
}

describe('the page asking the worker', () => {
  it('has one question at work, and of those that wait on one channel only the newest', async () => {
    const { ask, workers } = client();
    const [first, second, third] = [ask('a'), ask('a'), ask('a')];
    expect(await second).toBeNull();
    expect(workers[0]?.taken).toHaveLength(1);
    workers[0]?.answer();
    await first;
    expect(workers[0]?.taken.map(({ number }) => number)).toEqual([1, 3]);
    workers[0]?.answer();
    await third;
  });

  it('goes on with a fresh worker after cancelling, and after one that failed', async () => {
    const { engine, ask, workers } = client();
    const [given, next] = [ask('a'), ask('b')];
    engine.cancel();
    expect(await given).toBeNull();
    expect(workers[0]?.ended).toBe(true);
    workers[1]?.onerror?.({ message: 'broke' });
    await expect(next).rejects.toThrow('broke');
    const last = ask('c');
    workers[2]?.answer();
    await last;
  });

  it('tells that a worker did not start, and tries again with the next question', async () => {
    const { ask, workers } = client({ broken: 1 });
    await expect(ask('a')).rejects.toThrow();
    const next = ask('a');
    workers[0]?.answer();
    expect(await next).toBeNull();
  });

  it('tells that a question could not be handed over, and goes on with those that wait', async () => {
    const { ask, workers } = client();
    const first = ask('a');
    const [worker] = workers;
    if (worker === undefined) throw new RangeError('no worker was started');
    const [second, third] = [ask('b'), ask('c')];
    worker.refuses = true;
    const refused = Promise.allSettled([second, third]);
    worker.answer();
    await first;
    expect((await refused).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    worker.refuses = false;
    const last = ask('d');
    worker.answer();
    expect(await last).toBeNull();
  });

  it('gives up what has been at work for long when something newer is asked on its channel, and only then', async () => {
    const { ask, workers, clock } = client();
    const first = ask('a');
    clock.ms = LONG_MS;
    void ask('a');
    expect(workers).toHaveLength(1);
    clock.ms = LONG_MS + 1;
    void ask('b');
    expect(workers).toHaveLength(1);
    void ask('a');
    expect(await first).toBeNull();
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    // What waited longer goes first.
    expect(workers[1]?.taken.map(({ number }) => number)).toEqual([3]);
  });

  it('gives up vain work at once where the worker remembers nothing', async () => {
    const { ask, workers, clock } = client({ longMs: 0 });
    const first = ask('a');
    clock.ms = 1;
    const second = ask('a');
    expect(await first).toBeNull();
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    workers[1]?.answer();
    await second;
    expect(workers[1]?.taken.map(({ number }) => number)).toEqual([2]);
  });

  it('works on what a screen shows before what stands behind it', async () => {
    const { ask, workers } = client();
    const first = ask(behind('x'));
    void ask(behind('y'));
    void ask('a');
    void ask(behind('z'));
    void ask('b');
    for (let k = 0; k < 4; k += 1) {
      workers[0]?.answer();
      await first;
    }
    expect(workers[0]?.taken.map(({ number }) => number)).toEqual([1, 3, 5, 2, 4]);
  });
});
