import { describe, expect, it } from 'vitest';
import { attempt, challenge, group, laid, reportOn } from '../../../../../tests/reference/small-class.ts';
import { sinceLastTry } from './last-try.ts';
import { countingTry, tryRows } from './tries.ts';

/** 2 points for each whole cm: 50, 80 and 30 mm high, at three moments. */
const LOW = attempt({ id: 'low', layout: laid('cube'), at: '2026-03-05T10:00:00+01:00' });
const HIGH = attempt({ id: 'high', layout: laid('slab', 'cube'), at: '2026-03-05T10:10:00+01:00' });
const LAST = attempt({ id: 'last', layout: laid('slab'), at: '2026-03-05T10:20:00+01:00' });
const TRIES = [LOW, HIGH, LAST];
const reports = TRIES.map((one) => reportOn(one));
const TERNS = group('terns');
const reportOf = (id: string) => {
  const report = reports.find((one) => one.attempt === id);
  if (report === undefined) throw new RangeError(`no report of ${id}`);
  return report;
};

describe('the tries of a group', () => {
  it('stand in the order they were begun, with their points, and one of them counts', () => {
    expect(
      tryRows(TRIES, reports, challenge(), TERNS).map(({ number, total, counts }) => [number, total, counts]),
    ).toEqual([
      [1, 10, false],
      [2, 16, true],
      [3, 6, false],
    ]);
  });

  it('count by the rule of the challenge: last, or chosen, or none that is chosen', () => {
    expect(countingTry(reports, challenge({ attemptCounts: 'last' }), TERNS)?.attempt).toBe('last');
    expect(countingTry(reports, challenge({ attemptCounts: 'chosen' }), TERNS)).toBe(null);
    const chosen = reports.map((report) => ({ ...report, chosen: report.attempt === 'low' }));
    expect(countingTry(chosen, challenge({ attemptCounts: 'chosen' }), TERNS)?.attempt).toBe('low');
  });

  it('have no points while the class is being worked out', () => {
    expect(tryRows(TRIES, null, challenge(), TERNS).every(({ total, counts }) => total === null && !counts)).toBe(true);
  });
});

describe('what changed since the last try', () => {
  it('is told in points and in facts', () => {
    const since = sinceLastTry(reportOf('high'), reports, TRIES, challenge());
    expect(since).toMatchObject({ number: 1, more: 6 });
    expect(since?.changes.find(({ fact }) => fact === 'height')).toMatchObject({ before: 50, after: 80 });
    expect(sinceLastTry(reportOf('last'), reports, TRIES, challenge())).toMatchObject({ number: 2, more: -10 });
  });

  it('leaves out what the class is not shown', () => {
    const since = sinceLastTry(reportOf('high'), reports, TRIES, challenge({ hidden: ['height'] }));
    expect(since?.changes.some(({ fact }) => fact === 'height')).toBe(false);
    expect(since?.changes.some(({ fact }) => fact === 'volume')).toBe(true);
  });

  it('is nothing for the first try, after one that nobody built, and before anything is worked out', () => {
    expect(sinceLastTry(reportOf('low'), reports, TRIES, challenge())).toBe(null);
    expect(sinceLastTry(reportOf('high'), null, TRIES, challenge())).toBe(null);
    const away = reportOn(attempt({ ...LOW, state: { kind: 'absent' } }));
    expect(sinceLastTry(reportOf('high'), [away, reportOf('high')], [LOW, HIGH], challenge())).toBe(null);
  });

  it('has no difference in points when one of the two fell and counts nothing', () => {
    const fell = reportOn({ ...HIGH, state: { kind: 'fell', afterSeconds: 2 } });
    expect(sinceLastTry(fell, [reportOf('low'), fell], TRIES, challenge())).toMatchObject({ number: 1, more: null });
  });
});
