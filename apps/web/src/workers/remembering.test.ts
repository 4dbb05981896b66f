import type { EngineIssue, Report } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, group, reportOn } from '../../../../tests/reference/small-class.ts';
import type { Build, EngineClient } from './questions.ts';
import { remembering } from './remembering.ts';
import type { Progress } from './worker-client.ts';

const FIRST: Build = { attempt: attempt(), challenge: challenge(), group: group('terns'), events: [] };
const none = (): void => undefined;

/** A client that counts what it is asked; the first `overtaken` questions end with null. */
function counting(
  overtaken = 0,
  report = reportOn(FIRST.attempt),
): { readonly client: EngineClient; readonly asked: () => number } {
  let asked = 0;
  const answer = (): Result<Report, EngineIssue> | null => {
    asked += 1;
    return asked <= overtaken ? null : { ok: true, value: report };
  };
  return { client: { ask: async () => answer() as never, cancel: none }, asked: () => asked };
}

describe('an engine client that remembers', () => {
  it('asks once for the same try, challenge, group and strokes', async () => {
    const { client, asked } = counting();
    const engine = remembering(client);
    const first = await engine.ask('a', 'report', FIRST, none);
    expect(await engine.ask('b', 'report', { ...FIRST }, none)).toBe(first);
    expect(asked()).toBe(1);
  });

  it('asks again when any of them is another object', async () => {
    const { client, asked } = counting();
    const engine = remembering(client);
    await engine.ask('a', 'report', FIRST, none);
    await engine.ask('a', 'report', { ...FIRST, attempt: { ...FIRST.attempt } }, none);
    await engine.ask('a', 'report', { ...FIRST, challenge: { ...FIRST.challenge } }, none);
    await engine.ask('a', 'report', { ...FIRST, group: { ...FIRST.group } }, none);
    await engine.ask('a', 'report', { ...FIRST, events: [] }, none);
    expect(asked()).toBe(5);
  });

  it('asks again for what only the large solver could say, which was not to be had', async () => {
    const report = reportOn(FIRST.attempt);
    const { stability } = report;
    if (stability === null) throw new Error('the try of the small class is laid out');
    const { client, asked } = counting(0, { ...report, stability: { ...stability, verdict: 'needs-solver' } });
    const engine = remembering(client);
    await engine.ask('a', 'report', FIRST, none);
    await engine.ask('a', 'report', FIRST, none);
    expect(asked()).toBe(2);
  });

  it('asks once for what is at work already, and tells both how far it is', async () => {
    let tell: Progress = none;
    let answer: (report: Result<Report, EngineIssue>) => void = none;
    const client: EngineClient = {
      ask: (_channel, _topic, _ask, progress) => {
        tell = progress;
        return new Promise((resolve) => {
          answer = resolve as typeof answer;
        });
      },
      cancel: none,
    };
    const engine = remembering(client);
    const told: string[] = [];
    const first = engine.ask('a', 'report', FIRST, (solved) => told.push(`first ${solved}`));
    const second = engine.ask('b', 'report', { ...FIRST }, (solved) => told.push(`second ${solved}`));
    tell(3, 100);
    expect(told).toEqual(['first 3', 'second 3']);
    const third = engine.ask('c', 'report', FIRST, (solved) => told.push(`third ${solved}`));
    expect(told.at(-1)).toBe('third 3');
    answer({ ok: true, value: reportOn(FIRST.attempt) });
    expect(await second).toBe(await first);
    expect(await third).toBe(await first);
  });

  it('does not remember that a question was overtaken', async () => {
    const { client, asked } = counting(1);
    const engine = remembering(client);
    expect(await engine.ask('a', 'report', FIRST, none)).toBe(null);
    expect(await engine.ask('a', 'report', FIRST, none)).not.toBe(null);
    expect(asked()).toBe(2);
  });
});
