// The ruler beside a build and the squared paper under it, in centimetres and inches.

import { describe, expect, it } from 'vitest';
import { rulerLengthMm, rulerMarks, ticksPath } from './ruler-marks.ts';
import { sheetLines, sheetUnder } from './sheet.ts';

describe('the ruler', () => {
  it('is longer than the build by whole units, and never short', () => {
    expect([0, 150, 400, 401].map((high) => rulerLengthMm(high, 'cm'))).toEqual([210, 210, 430, 430]);
    expect(rulerLengthMm(400, 'in')).toBe(17 * 25.4);
  });

  it('has lines every half centimetre, longer ones at 1 and 5, numerals at 5', () => {
    const { ticks, numerals } = rulerMarks('cm', 210, 1);
    expect(ticks.length).toBe(43);
    expect(ticks.slice(0, 4).map(({ lengthPx }) => lengthPx)).toEqual([16, 6, 10, 6]);
    expect(numerals.map(({ atMm, text }) => `${text}@${atMm}`)).toEqual(['5@50', '10@100', '15@150', '20@200']);
  });

  it('counts inches, with quarters', () => {
    const { ticks, numerals } = rulerMarks('in', 9 * 25.4, 1);
    expect(ticks.length).toBe(37);
    expect(ticks.slice(0, 5).map(({ lengthPx }) => lengthPx)).toEqual([16, 6, 10, 6, 16]);
    expect(numerals.map(({ text }) => text)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8']);
  });

  it('leaves out what would stand too close', () => {
    const { ticks, numerals } = rulerMarks('cm', 1000, 0.2);
    expect(ticks.map(({ lengthPx }) => lengthPx)).toEqual(Array(21).fill(16));
    expect(numerals.map(({ text }) => text)).toEqual(['10', '20', '30', '40', '50', '60', '70', '80', '90']);
    expect(rulerMarks('cm', 1000, 0.001).ticks).toEqual([]);
  });

  it('is drawn upwards from its foot', () => {
    expect(
      ticksPath(
        {
          ticks: [
            { atMm: 0, lengthPx: 16 },
            { atMm: 5, lengthPx: 6 },
          ],
          numerals: [],
        },
        [10, 300],
        2,
      ),
    ).toBe('M10 300L26 300M10 290L16 290');
  });
});

describe('the sheet', () => {
  const ground = { minX: -31, minY: 3, maxX: 40, maxY: 55 };

  it('reaches past the ground on all sides, in whole squares', () => {
    expect(sheetUnder(ground, 'cm')).toEqual({ minX: -130, minY: -80, maxX: 130, maxY: 180 });
  });

  it('has a line each square from the middle of the table, every fifth bold', () => {
    const lines = sheetLines({ minX: -20, minY: 0, maxX: 50, maxY: 30 }, 'cm');
    const upright = lines.filter(({ from, to }) => from[0] === to[0]);
    expect(upright.filter(({ isBold }) => isBold).map(({ from }) => from[0])).toEqual([0, 50]);
    expect(upright.length).toBe(8);
    expect(lines.length - upright.length).toBe(4);
    expect(lines.at(-1)?.isBold).toBe(true);
  });

  it('has squares of an inch beside a ruler in inches', () => {
    const { minX, maxX } = sheetUnder(ground, 'in');
    expect([minX / 25.4, maxX / 25.4]).toEqual([-8, 8]);
  });
});
