import { describe, expect, it } from 'vitest';
import { attempt, classOf, laid } from '../../../../tests/reference/small-class.ts';
import {
  changeAttempt,
  stillSeen,
  withAdjustment,
  withAnswer,
  withDecision,
  withMark,
  withOwn,
} from './class-changes.ts';
import {
  secondsOf,
  withFall,
  withoutMark,
  withoutReading,
  withoutSeconds,
  withReading,
  withSeconds,
  withSeenBy,
  withState,
} from './observed-changes.ts';

const SEEN = attempt({ confirmedBy: 'Teacher', observed: { heightReadingsMm: [79, 81], stoodSeconds: 30 } });

describe('a confirmed build', () => {
  const by = (change: (one: typeof SEEN) => typeof SEEN) => stillSeen(SEEN, change(SEEN)).confirmedBy;

  it('is provisional again when its pieces, readings, seconds or state change', () => {
    expect(by((one) => ({ ...one, layout: laid('slab') }))).toBe(null);
    expect(by(withReading(83))).toBe(null);
    expect(by(withoutReading(0))).toBe(null);
    expect(by(withSeconds(31))).toBe(null);
    expect(by(withState('absent'))).toBe(null);
    expect(by(withFall(3))).toBe(null);
  });

  it('stays confirmed when people judge, decide or work something out', () => {
    expect(by(withAnswer('no-tape', { kept: true }))).toBe('Teacher');
    expect(by(withMark({ judge: 'visitor', criterion: 'idea', mark: 3 }))).toBe('Teacher');
    expect(by(withOwn({ measure: 'volume', value: 197_000 }))).toBe('Teacher');
    expect(by(withDecision({ measure: 'height', value: 80, by: 'Teacher', reason: 'Tip bent', at: SEEN.at }))).toBe(
      'Teacher',
    );
    expect(by(withAdjustment({ points: 1, by: 'Teacher', reason: 'Tidy', at: SEEN.at }))).toBe('Teacher');
  });

  it('is confirmed by a change that says who saw it, with or without other changes', () => {
    expect(by(withSeenBy('Measurer'))).toBe('Measurer');
    expect(by((one) => withSeenBy('Measurer')(withReading(83)(one)))).toBe('Measurer');
    expect(by(withSeenBy(null))).toBe(null);
  });

  it('is held to this by every change of an attempt in a class', () => {
    const record = classOf({ attempts: [SEEN] });
    const [after] = changeAttempt(SEEN.id, withReading(83))(record).attempts;
    expect(after?.confirmedBy).toBe(null);
    expect(after?.observed.heightReadingsMm).toEqual([79, 81, 83]);
  });
});

describe('what was seen of a build', () => {
  it('keeps readings in the order taken', () => {
    expect(withoutReading(0)(withReading(80)(SEEN)).observed.heightReadingsMm).toEqual([81, 80]);
  });

  it('takes the seconds of a build that fell as those until then', () => {
    const fell = withState('fell')(SEEN);
    expect(fell.state).toEqual({ kind: 'fell', afterSeconds: 30 });
    expect(withSeconds(7)(fell).state).toEqual({ kind: 'fell', afterSeconds: 7 });
    expect(withSeconds(7)(fell).observed.stoodSeconds).toBe(30);
    expect(withoutSeconds(fell)).toBe(fell);
    expect(withState('fell')(attempt()).state).toEqual({ kind: 'fell', afterSeconds: 0 });
  });

  it('forgets the seconds whole, so that nobody reads nought', () => {
    expect('stoodSeconds' in withoutSeconds(SEEN).observed).toBe(false);
    expect(withoutSeconds(SEEN).observed.heightReadingsMm).toBe(SEEN.observed.heightReadingsMm);
  });

  it('changes nothing when the state is the same', () => {
    expect(withState('stood')(SEEN)).toBe(SEEN);
  });

  it('drops one mark of one judge', () => {
    const marked = [
      { judge: 'teacher', criterion: 'idea', mark: 3 },
      { judge: 'teacher', criterion: 'craft', mark: 2 },
      { judge: 'visitor', criterion: 'idea', mark: 4 },
    ];
    expect(withoutMark('teacher', 'idea')({ ...SEEN, judged: marked }).judged).toEqual(marked.slice(1));
  });
});

describe('the seconds of a build', () => {
  it('are those it stood, or those until it fell, whatever was typed before', () => {
    expect(secondsOf(SEEN)).toBe(30);
    const fell = withFall(3)(SEEN);
    expect(secondsOf(fell)).toBe(3);
    expect(secondsOf(withSeconds(5)(fell))).toBe(5);
    expect(secondsOf(withoutSeconds(SEEN))).toBe(null);
  });
});
