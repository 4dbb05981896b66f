import { expect, it } from 'vitest';
import { attempt, challenge, group } from '../../../../tests/reference/small-class.ts';
import type { EngineClient } from './engine-client.ts';
import { engineClient, LONG_MS } from './engine-client.ts';
import type { Build, Message, Question } from './questions.ts';

const BUILD: Build = { attempt: attempt(), challenge: challenge(), group: group('terns'), events: [] };

/** An engine client whose workers answer when the test says so, and a clock that it sets. */
function scene() {
  const asked: Question[] = [];
  const workers: { ended: boolean; onmessage: ((event: { data: Message }) => void) | null }[] = [];
  const clock = { ms: 0 };
  const start = (): Worker => {
    const worker = {
      ended: false,
      onmessage: null,
      postMessage: (question: Question) => asked.push(question),
      terminate: () => {
        worker.ended = true;
      },
    };
    workers.push(worker);
    return worker as unknown as Worker;
  };
  const engine = engineClient(start, () => clock.ms);
  const answer = (question: Question | undefined): void =>
    workers.at(-1)?.onmessage?.({ data: { number: question?.number ?? -1, answer: null } });
  return { engine, asked, workers, clock, answer };
}

const ask = (engine: EngineClient, channel: string) =>
  engine.ask(channel, 'tilt', { ...BUILD, towardsRad: 0 }, () => undefined);

it('works on one question at a time, and of those that wait on one channel only on the newest', async () => {
  const { engine, asked, answer } = scene();
  const [first, second, third] = [ask(engine, 'a'), ask(engine, 'a'), ask(engine, 'a')];
  expect(await second).toBeNull();
  expect(asked.map(({ number }) => number)).toEqual([1]);
  answer(asked[0]);
  expect(await first).toBeNull();
  expect(asked.map(({ number }) => number)).toEqual([1, 3]);
  answer(asked[1]);
  await third;
});

it('gives up what has been at work for long when something newer is asked on its channel, and only then', async () => {
  const { engine, asked, workers, clock } = scene();
  const first = ask(engine, 'a');
  clock.ms = LONG_MS;
  void ask(engine, 'a');
  expect(workers).toHaveLength(1);
  clock.ms = LONG_MS + 1;
  void ask(engine, 'b');
  expect(workers).toHaveLength(1);
  void ask(engine, 'a');
  expect(await first).toBeNull();
  expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
  // What waited longer goes first.
  expect(asked.map(({ number }) => number)).toEqual([1, 3]);
});

it('cancelling ends what is at work, and what waits goes on in a fresh worker', async () => {
  const { engine, asked, workers } = scene();
  const first = ask(engine, 'a');
  void ask(engine, 'b');
  engine.cancel();
  expect(await first).toBeNull();
  expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
  expect(asked.map(({ number }) => number)).toEqual([1, 2]);
});
