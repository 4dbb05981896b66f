import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../tests/tools/share.ts';
import { secondsOf } from './instant.ts';

/** The machine counts from 1970, and takes a year below 100 for one of the 1900s unless it is set. */
const yearZero = new Date(0);
yearZero.setUTCFullYear(0, 0, 1);

describe('moments', () => {
  it('agree with the calendar of JavaScript, to the year 9999 (seed 4201)', () => {
    const moment = fc.date({
      min: new Date('0001-01-02T00:00:00Z'),
      max: new Date('9999-12-30T00:00:00Z'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(moment, fc.integer({ min: -14 * 60, max: 14 * 60 }), (date, aheadMinutes) => {
        const local = new Date(date.getTime() + aheadMinutes * 60_000).toISOString().replace('Z', zoneOf(aheadMinutes));
        const expected = date.getTime() - yearZero.getTime();
        expect(Math.round((secondsOf(local) ?? Number.NaN) * 1000)).toBe(expected);
      }),
      { seed: 4201, numRuns: share(20_000, 1_000) },
    );
  });

  it('are the same however they are written', () => {
    const noon = secondsOf('2026-03-05T12:00:00Z');
    expect(secondsOf('2026-03-05T13:00:00+01:00')).toBe(noon);
    expect(secondsOf('2026-03-05T06:30-05:30')).toBe(noon);
    expect(secondsOf('2026-03-05T12:00:00.000Z')).toBe(noon);
  });

  it('need a date that there is, a time of day and a zone', () => {
    expect(secondsOf('2024-02-29T23:59:59Z')).not.toBeNull();
    expect(secondsOf('2000-02-29T00:00:00Z')).not.toBeNull();
    for (const text of [
      '2026-02-29T10:00:00Z',
      '1900-02-29T10:00:00Z',
      '2026-13-01T10:00:00Z',
      '2026-00-01T10:00:00Z',
      '2026-04-31T10:00:00Z',
      '2026-04-00T10:00:00Z',
      '2026-04-01T24:00:00Z',
      '2026-04-01T10:60:00Z',
      '2026-04-01T10:00:60Z',
      '2026-04-01T10:00:00+24:00',
      '2026-04-01T10:00:00+01:60',
      '2026-04-01T10:00:00',
      '2026-04-01',
      'yesterday',
    ]) {
      expect([text, secondsOf(text)]).toEqual([text, null]);
    }
  });
});

function zoneOf(aheadMinutes: number): string {
  const [hours, minutes] = [Math.floor(Math.abs(aheadMinutes) / 60), Math.abs(aheadMinutes) % 60];
  return `${aheadMinutes < 0 ? '-' : '+'}${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`;
}
