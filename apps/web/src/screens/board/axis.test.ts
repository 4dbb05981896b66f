import { describe, expect, it } from 'vitest';
import { axisOf, percentAt } from './axis.ts';

describe('the ruler over the bars', () => {
  it('goes from 0 in ones, twos or fives to the next half step past the longest bar', () => {
    const axis = axisOf(0, 37.9, false);
    expect(axis.numbers).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40]);
    expect([axis.from, axis.to]).toEqual([0, 40]);
    expect(axisOf(0, 102.6, false).to).toBe(110);
    expect(axisOf(0, 102.6, false).numbers).toEqual([0, 20, 40, 60, 80, 100]);
  });

  it('has ten divisions from number to number, the fifth longer', () => {
    const { ticks } = axisOf(0, 8, false);
    expect(ticks.slice(0, 11).map(({ size }) => size[0])).toEqual([...'lssssmssssl']);
    expect(ticks.slice(0, 3).map(({ at }) => at)).toEqual([0, 0.1, 0.2]);
  });

  it('halves inches: 1, 2, 4, 8 with eight divisions', () => {
    const axis = axisOf(0, 14.9, true);
    expect(axis.numbers).toEqual([0, 2, 4, 6, 8, 10, 12, 14]);
    expect(axis.to).toBe(15);
    expect(axis.ticks.slice(0, 9).map(({ size }) => size[0])).toEqual([...'lsssmsssl']);
    expect(axis.ticks[1]?.at).toBe(0.25);
  });

  it('reaches below 0 where a value does', () => {
    const axis = axisOf(-5, 27, false);
    expect(axis.numbers).toEqual([-5, 0, 5, 10, 15, 20, 25]);
    expect([axis.from, axis.to]).toEqual([-5, 27.5]);
    expect(percentAt(-5, axis)).toBe(0);
    expect(percentAt(27.5, axis)).toBe(100);
  });

  it('is drawn for nothing at all, and for the smallest and the largest of values', () => {
    expect(axisOf(0, 0, false).numbers).toEqual([0]);
    for (const most of [1e-3, 0.07, 1, 9, 10, 99, 1770, 2.5e6]) {
      for (const inches of [false, true]) {
        const { numbers, to, from } = axisOf(0, most, inches);
        expect(from).toBe(0);
        // As near as doubles come to the end of the bar itself.
        expect(to).toBeGreaterThanOrEqual(most * (1 - 1e-9));
        expect(numbers.length).toBeGreaterThan(1);
        expect(numbers.length).toBeLessThanOrEqual(10);
      }
    }
  });
});
