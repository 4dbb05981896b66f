import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { decode, encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { addChallenge, addWithBuilds, copyOf } from './challenge-copies.ts';
import { hasCopiesOnly, isLocked } from './challenge-lock.ts';
import { removeChallenge } from './challenge-removal.ts';
import { addAttempt, changeAttempt, newAttempt, withMark } from './class-changes.ts';
import { withReading } from './observed-changes.ts';

const CLASS = demoClass();
const [TALL] = CLASS.challenges as [(typeof CLASS.challenges)[0]];
const COPY = copyOf(CLASS, TALL);
const COPIED = addWithBuilds(COPY, TALL.id)(CLASS);

const firstTry = (record: ClassRecord) => record.attempts.find(({ challenge }) => challenge === COPY.id)?.id ?? '';

describe('the rules of a challenge', () => {
  it('stay once groups have built under them, and are free in a copy', () => {
    expect(isLocked(CLASS, TALL.id)).toBe(true);
    expect(isLocked(addChallenge(COPY, TALL.id)(CLASS), COPY.id)).toBe(false);
    expect(hasCopiesOnly(addChallenge(COPY, TALL.id)(CLASS), COPY.id)).toBe(false);
  });

  it('are free in a copy with the builds, where a slip is to be mended, and stay where they were built', () => {
    expect([isLocked(COPIED, COPY.id), hasCopiesOnly(COPIED, COPY.id)]).toEqual([false, true]);
    expect([isLocked(COPIED, TALL.id), hasCopiesOnly(COPIED, TALL.id)]).toEqual([true, false]);
    const again = decode(encode('class', COPIED), 'class');
    expect(again.ok && isLocked(again.value.value, COPY.id)).toBe(false);
  });

  it('are free in a copy of a copy', () => {
    const second = copyOf(COPIED, COPY);
    expect(isLocked(addWithBuilds(second, COPY.id)(COPIED), second.id)).toBe(false);
  });

  it('stay in a copy as well once a group builds or measures there', () => {
    const [group] = COPIED.groups;
    if (group === undefined) throw new RangeError('the demo has no group');
    const further = newAttempt(COPIED, group, COPY, '2026-03-05T15:00:00+01:00');
    expect(isLocked(addAttempt(further)(COPIED), COPY.id)).toBe(true);
    expect(isLocked(changeAttempt(firstTry(COPIED), withReading(400))(COPIED), COPY.id)).toBe(true);
    const marked = changeAttempt(firstTry(COPIED), withMark({ judge: 'A', criterion: 'idea', mark: 3 }))(COPIED);
    expect(isLocked(marked, COPY.id)).toBe(false);
  });

  it('stay in a copy once the builds stand nowhere else', () => {
    expect(isLocked(removeChallenge(TALL.id)(COPIED), COPY.id)).toBe(true);
  });
});
