// What comes in never touches what is here.

import { demoClass } from '@cairnmark/demo';
import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attemptAt, classRecord } from '../../../../tests/tools/records/class-record.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { asTaken, heldOf, takeIn } from './bring-in-changes.ts';

const seed = freshSeed('tries brought in');
const runs = { seed, numRuns: share(1_000, 100), endOnFailure: true };

const demo = demoClass();
const [first] = demo.attempts as [Attempt];
const READ_AGAIN: Attempt = { ...first, observed: { ...first.observed, heightReadingsMm: [271] } };

describe('a try that comes in', () => {
  it('is told as here when it is, whatever its id and whether it is chosen', () => {
    expect(heldOf(demo, first)).toEqual({ kind: 'same', attempt: first });
    expect(heldOf(demo, { ...first, id: 'another', chosen: true })).toEqual({ kind: 'same', attempt: first });
    expect(takeIn(first)(demo)).toBe(demo);
  });

  it('comes in beside the one that is here when its content is another, once', () => {
    expect(heldOf(demo, READ_AGAIN)).toEqual({ kind: 'other', attempt: first });
    const after = takeIn(READ_AGAIN)(demo);
    expect(after.attempts).toEqual([...demo.attempts, { ...READ_AGAIN, id: 'tall-light-puffins-3' }]);
    expect(takeIn(READ_AGAIN)(after)).toBe(after);
  });

  it('keeps its id and its time when it is new', () => {
    const fresh = { ...first, id: 'tall-light-puffins-1100', at: '2026-10-08T11:00:00+01:00' };
    expect(heldOf(demo, fresh)).toEqual({ kind: 'none' });
    expect(takeIn(fresh)(demo).attempts.at(-1)).toEqual(fresh);
  });

  it('leaves the choice of the group as it is', () => {
    const chosen: ClassRecord = { ...demo, attempts: demo.attempts.map((one) => ({ ...one, chosen: one === first })) };
    expect(asTaken(chosen, { ...READ_AGAIN, chosen: true }).chosen).toBe(false);
    expect(asTaken(demo, { ...READ_AGAIN, chosen: true }).chosen).toBe(true);
  });
});

describe(`tries brought in, whatever they are (seed ${seed})`, () => {
  const cases = classRecord.chain((record) =>
    fc.tuple(
      fc.constant(record),
      attemptAt(
        record.challenges[0]!,
        record.groups.map(({ id }) => id),
      ),
    ),
  );

  it('leave all that is here as it was, come in at most once, and leave a class that can be kept', () => {
    fc.assert(
      fc.property(cases, ([record, brought]) => {
        const after = takeIn(brought)(record);
        expect(after.attempts.slice(0, record.attempts.length)).toEqual(record.attempts);
        expect(after.attempts.length - record.attempts.length).toBeLessThanOrEqual(1);
        expect({ ...after, attempts: [] }).toEqual({ ...record, attempts: [] });
        expect(new Set(after.attempts.map(({ id }) => id)).size).toBe(after.attempts.length);
        expect(takeIn(brought)(after)).toBe(after);
        expect(faultsOf('class', after)).toEqual([]);
      }),
      runs,
    );
  });
});
