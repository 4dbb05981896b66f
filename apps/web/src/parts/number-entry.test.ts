import { rulerOf } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { entryOf, within } from './number-entry.ts';
import { writtenUnits } from './written-units.ts';

const cm = writtenUnits('mm', rulerOf('cm'));
const counts = writtenUnits('count', rulerOf('cm'));
const length = { least: 0, most: 10_000 };
const pieces = { least: 1, most: 1000, whole: true };

describe('what a field makes of a typed number', () => {
  it('takes what lies within its limits, both ends too', () => {
    expect(entryOf('43', cm, length)).toEqual({ kind: 'taken', value: 430 });
    expect(entryOf('0', cm, length)).toEqual({ kind: 'taken', value: 0 });
    expect(entryOf('1000', cm, length)).toEqual({ kind: 'taken', value: 10_000 });
  });

  it('says on which side a number is out', () => {
    expect(entryOf('-0.1', cm, length)).toEqual({ kind: 'refused', fault: 'too-small' });
    expect(entryOf('1000.1', cm, length)).toEqual({ kind: 'refused', fault: 'too-large' });
    expect(within(12_500, length)).toEqual({ kind: 'refused', fault: 'too-large' });
  });

  it('asks back also where one meaning is out of bounds: the slip is told then', () => {
    expect(entryOf('1,250', cm, length)).toEqual({ kind: 'either', decimal: 12.5, thousands: 12_500 });
  });

  it('counts things in whole numbers', () => {
    expect(entryOf('5', counts, pieces)).toEqual({ kind: 'taken', value: 5 });
    expect(entryOf('5.0', counts, pieces)).toEqual({ kind: 'taken', value: 5 });
    expect(entryOf('2.5', counts, pieces)).toEqual({ kind: 'refused', fault: 'not-whole' });
    expect(entryOf('1,250', counts, { ...pieces, most: 2000 })).toEqual({ kind: 'taken', value: 1250 });
    expect(entryOf('3,000', counts, { ...pieces, most: 5000 })).toEqual({
      kind: 'either',
      decimal: 3,
      thousands: 3000,
    });
  });

  it('tells nothing typed from nothing understood', () => {
    expect(entryOf('', cm, length)).toEqual({ kind: 'refused', fault: 'empty' });
    expect(entryOf('6..0', cm, length)).toEqual({ kind: 'refused', fault: 'unreadable' });
  });
});
