import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import type { Facts, MeasuredRule, PointsRow, Rounding } from '../types.ts';
import { pointsErrors } from './errors.ts';
import { pointsLines } from './lines.ts';

function facts(values: Readonly<Record<string, number | null>>, tolerance = 0): Facts {
  return new Map(Object.entries(values).map(([id, value]) => [id, { id, value, unit: 'mm', tolerance, errors: {} }]));
}

function row(points: number, per: number, rounding: Rounding, more: Partial<PointsRow> = {}): PointsRow {
  return { id: 'row', measure: 'height', points, per, rounding, ...more };
}

const earned = (table: PointsRow, height: number): number => pointsLines([table], facts({ height })).sum ?? Number.NaN;

describe('points, row by row', () => {
  it('[P1] 2 points for each 10 mm', () => {
    expect(pointsLines([row(2, 10, 'down')], facts({ height: 370 })).lines).toEqual([
      { row: 'row', measure: 'height', value: 370, times: 37, points: 74, limited: null },
    ]);
  });

  it('[P2] rounds the number of times, not the points', () => {
    // 37.6 mm at 3 points a cm: 3.76 times; whole cm 3, nearest 4; rounding the points (11.28) would give 11.
    expect(earned(row(3, 10, 'down'), 37.6)).toBe(9);
    expect(earned(row(3, 10, 'nearest'), 37.6)).toBe(12);
    expect(earned(row(3, 10, 'up'), 30.2)).toBe(12);
    expect(earned(row(3, 10, 'none'), 37.6)).toBe(11.28);
  });

  it('[P2] counts exact cm as whole, though 3 x 11.1 and 0.1 + 0.2 are not in doubles', () => {
    // 3 x 11.1 is 33.3 = 333 tenths; in doubles 33.3 / 0.1 is 332.99999999999994.
    expect(Math.floor(33.3 / 0.1)).toBe(332);
    expect(earned(row(1, 0.1, 'down'), 33.3)).toBe(333);
    expect(earned(row(1, 0.3, 'down'), 0.1 + 0.2)).toBe(1);
    expect(earned(row(1, 0.3, 'up'), 0.1 + 0.2)).toBe(1);
  });

  it('[P2] counts sixteenths of an inch, square inches and square cm exactly', () => {
    const sixteenth = 25.4 / 16;
    for (const n of [3, 7, 35, 113, 1021]) {
      expect(earned(row(5, sixteenth, 'down'), n * sixteenth)).toBe(5 * n);
      expect(earned(row(5, sixteenth, 'up'), n * sixteenth)).toBe(5 * n);
      expect(earned(row(2, 25.4 * 25.4, 'down'), n * 645.16)).toBe(2 * n);
      expect(earned(row(2, 100, 'up'), n * 100)).toBe(2 * n);
    }
  });

  it('[P3] stops at the cap and at the floor and says so', () => {
    const table = row(2, 10, 'down', { capPoints: 15, floorPoints: 5 });
    const limited = (height: number) => {
      const [line] = pointsLines([table], facts({ height })).lines;
      return [line?.points, line?.limited, line?.times];
    };
    expect(limited(90)).toEqual([15, 'cap', 9]);
    expect(limited(70)).toEqual([14, null, 7]);
    expect(limited(20)).toEqual([5, 'floor', 2]);
  });

  it('[P3] a value that just reaches the cap or the floor is not held by it', () => {
    const table = row(3, 10, 'down', { capPoints: 21, floorPoints: 9 });
    expect(pointsLines([table], facts({ height: 70 })).lines[0]?.limited).toBeNull();
    expect(pointsLines([table], facts({ height: 30 })).lines[0]?.limited).toBeNull();
  });

  it('[P3] [R1] cap and floor are fixed to a millionth like all points', () => {
    expect(earned(row(1, 1, 'none', { capPoints: 0.1 + 0.2 }), 7)).toBe(0.3);
    const [line] = pointsLines([row(1, 1, 'none', { floorPoints: 0.1 + 0.2 })], facts({ height: 0 })).lines;
    expect([line?.points, line?.limited]).toEqual([0.3, 'floor']);
  });

  it('[P3] a row may take points, down to its floor', () => {
    const table = row(-2, 1, 'none', { floorPoints: -7 });
    expect(earned(table, 3)).toBe(-6);
    expect(earned(table, 5)).toBe(-7);
  });

  it('[P4] what may take points and was not measured is not known, and neither is the sum', () => {
    const linesOf = (...rows: PointsRow[]) => pointsLines(rows, facts({ height: null, pieces: 3 }));
    const unknown = { row: 'row', measure: 'height', value: null, times: null, points: null, limited: null };
    const pieces = row(2, 1, 'none', { id: 'pieces', measure: 'pieces' });
    expect(linesOf(pieces, row(-1, 100, 'down'))).toMatchObject({ lines: [{ points: 6 }, unknown], sum: null });
    // From 0 on, -2 points a mm fall to the floor of -7; with a cap of -3 a row gives no more than that.
    expect(linesOf(row(-2, 1, 'none', { floorPoints: -7 })).sum).toBeNull();
    expect(linesOf(row(2, 1, 'none', { capPoints: -3 })).sum).toBeNull();
    // No value of these gives less than 0.
    for (const giving of [
      row(2, 1, 'none'),
      row(2, 1, 'none', { floorPoints: -7 }),
      row(-2, 1, 'none', { floorPoints: 0 }),
      row(0, 1, 'none'),
    ]) {
      expect(linesOf(pieces, giving).sum).toBe(6);
    }
  });

  it('[P4] what was not measured earns 0 and says so, whatever the floor', () => {
    const unmeasured = { row: 'row', measure: 'height', value: null, times: null, points: 0, limited: null };
    expect(pointsLines([row(2, 10, 'down', { floorPoints: 5 })], facts({ height: null })).lines).toEqual([unmeasured]);
    expect(pointsLines([row(2, 10, 'down')], facts({})).lines).toEqual([unmeasured]);
  });

  it('[P5] the sum is of all rows, exactly', () => {
    const rows = [row(0.1, 1, 'none'), row(0.2, 1, 'none', { id: 'edges', measure: 'edges' })];
    expect(pointsLines(rows, facts({ height: 3, edges: 3 })).sum).toBe(0.9);
    expect(0.1 * 3 + 0.2 * 3).not.toBe(0.9);
  });

  it('[P6] points are the shown times multiplied by the points of the row', () => {
    // 20 / 3 is 6.666667 times as shown; 6.666667 x 3 = 20.000001, where unrounded thirds would give 20.
    const [line] = pointsLines([row(3, 3, 'none')], facts({ height: 20 })).lines;
    expect([line?.times, line?.points]).toEqual([6.666667, 20.000001]);
  });

  it('[P8] points given once, from a limit on, are a row of whole times with a cap', () => {
    const once = row(7, 300, 'down', { capPoints: 7 });
    expect([0, 299.999999, 300, 599, 600, 1500].map((height) => earned(once, height))).toEqual([0, 0, 7, 7, 7, 7]);
  });

  it('[P8] a bonus for full sets counts each set, or the first alone', () => {
    const sets = (more: Partial<PointsRow>, count: number) =>
      pointsLines([row(5, 1, 'down', { measure: 'full-sets', ...more })], facts({ 'full-sets': count })).sum;
    expect([0, 1, 3].map((count) => sets({}, count))).toEqual([0, 5, 15]);
    expect([0, 1, 3].map((count) => sets({ capPoints: 5 }, count))).toEqual([0, 5, 5]);
  });

  it('refuses a row that gives points for each 0 of a measure', () => {
    expect(() => pointsLines([row(2, 0, 'down')], facts({ height: 3 }))).toThrow(RangeError);
  });

  it('[P2] more height never earns less where points are positive (seed 4121)', () => {
    const height = fc.integer({ min: 0, max: 10 ** 9 }).map((n) => n / 1e6);
    const rounding = fc.constantFrom<Rounding>('none', 'down', 'nearest', 'up');
    fc.assert(
      fc.property(height, height, rounding, fc.constantFrom(1, 7, 10, 1.5875), (a, b, how, per) => {
        const table = row(3, per, how);
        expect(earned(table, Math.max(a, b))).toBeGreaterThanOrEqual(earned(table, Math.min(a, b)));
      }),
      { seed: 4121, numRuns: share(20_000, 1_000) },
    );
  });
});

describe('the measuring error of the points', () => {
  const tolerance = (rows: readonly PointsRow[], all: Facts): number => pointsErrors(rows, [], all).tolerance;

  it('[P7] rows on one measure add up', () => {
    // 3 points for 12 mm and 4 for 8: a quarter and a half a mm; with 3 mm 2.25, and 0.75 where one of them takes.
    const rows = (second: number) => [row(3, 12, 'none'), row(second, 8, 'none', { id: 'again' })];
    expect(tolerance(rows(4), facts({ height: 70 }, 3))).toBe(2.25);
    expect(tolerance(rows(-4), facts({ height: 70 }, 3))).toBe(0.75);
  });

  it('[P7] different measures add in quadrature', () => {
    // 3 x 1 and 4 x 1 points: root of 9 + 16.
    const rows = [row(3, 1, 'none'), row(4, 1, 'none', { id: 'other', measure: 'base-perimeter' })];
    expect(tolerance(rows, facts({ height: 70, 'base-perimeter': 90 }, 1))).toBe(5);
  });

  it('[P7] rows built on the same reading add up with it, whatever their measures', () => {
    // Height 3 and volume 40 from the same edge: 2 points a mm and 0.1 a mm3 make 6 + 4; the drum is read by itself.
    const all: Facts = new Map([
      ['height', { id: 'height', value: 70, unit: 'mm', tolerance: 5, errors: { 'cube/edge': 3, 'drum/height': 4 } }],
      ['volume', { id: 'volume', value: 900, unit: 'mm3', tolerance: 50, errors: { 'cube/edge': 40 } }],
    ]);
    const rows = [row(2, 1, 'none'), row(1, 10, 'none', { id: 'volume', measure: 'volume' })];
    const { tolerance: whole, errors } = pointsErrors(rows, [], all);
    expect(errors).toEqual({ 'cube/edge': 10, 'drum/height': 8 });
    // The volume's own: root of 50 squared less 40 squared, a tenth of it 3 points; 100 + 64 + 9.
    expect(Math.abs(whole - Math.sqrt(173))).toBeLessThan(1e-12);
    // A row that takes as much as the other gives leaves the edge out of it.
    const against = [row(40, 1, 'none'), row(-3, 1, 'none', { id: 'volume', measure: 'volume' })];
    expect(pointsErrors(against, [], all).errors['cube/edge']).toBe(0);
  });

  it('[P7] a row that was not measured carries none', () => {
    expect(tolerance([row(2, 10, 'none')], facts({ height: null }, 3))).toBe(0);
    expect(tolerance([row(2, 10, 'none')], facts({}, 3))).toBe(0);
  });

  it('[P9] what goes in steps is told apart, with all that hangs on its measure', () => {
    const limit: MeasuredRule = {
      id: 'low',
      kind: 'measured',
      measure: 'height',
      comparison: 'at-most',
      limit: 300,
      consequence: { kind: 'costs', points: 5 },
    };
    const must: MeasuredRule = { ...limit, id: 'must', measure: 'volume', consequence: { kind: 'must' } };
    const all = facts({ height: 70, volume: 90, paper: 40 }, 3);
    const rows = [
      row(3, 1, 'none'),
      row(5, 1, 'none', { id: 'volume', measure: 'volume' }),
      row(1, 10, 'down', { id: 'paper', measure: 'paper' }),
    ];
    const { tolerance: even, steps } = pointsErrors(rows, [limit, must], all);
    // 5 points a mm3 of 3 mm3; a rule that must be kept gives no points.
    expect(even).toBe(15);
    expect(steps.map((one) => [one.fact.id, one.rows.map(({ id }) => id), one.rules.map(({ id }) => id)])).toEqual([
      ['height', ['row'], ['low']],
      ['paper', ['paper'], []],
    ]);
    // A count is exact: whatever is given for it errs by nothing.
    expect(pointsErrors(rows, [limit], facts({ height: 70, paper: 40 })).steps).toEqual([]);
  });
});
