import { rulerOf } from '@cairnmark/geometry';
import { favour, mostEven, whoEarns } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../../../../tests/reference/lab/examples.ts';
import { challenge, KIT, PAPER } from '../../../../tests/reference/small-class.ts';
import type { KindOfPiece } from '../types.ts';
import { labKit } from './lab-kit.ts';
import { pointsTable, todaysRates, underPoints, withRows } from './lab-points.ts';
import { isCountedRow } from './lab-rows.ts';

const kind = (id: string, solid: KindOfPiece['solid']): KindOfPiece => ({
  id,
  name: id,
  solid,
  stock: 1,
  material: PAPER,
  surface: 'paper',
  friction: 0.4,
});

/** Kinds of tests/corpus/points-examples.json, by its own names and sizes, in mm. */
const EIGHT: readonly KindOfPiece[] = [
  kind('cube', { solid: 'cube', sizes: { edge: 50 } }),
  kind('cuboid', { solid: 'rectangular-prism', sizes: { length: 60, width: 40, height: 30 } }),
  kind('triPrism', { solid: 'regular-prism', sizes: { sides: 3, edge: 40, height: 100 } }),
  kind('sqPyr', { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 40 } }),
  kind('triPyr', { solid: 'regular-pyramid', sizes: { sides: 3, edge: 40, height: 100 } }),
  kind('cylinder', { solid: 'cylinder', sizes: { radius: 30, height: 50 } }),
  kind('cone', { solid: 'cone', sizes: { radius: 30, height: 40 } }),
  kind('sphere', { solid: 'sphere', sizes: { radius: 30 } }),
];

const CM = rulerOf('cm');
const eight = challenge({ kit: { ...KIT, kinds: EIGHT } });
const CONVENTIONS = {
  'flat-only': ['Ff', 'Se', 'Vx'],
  'flat-and-curved-apart': ['Ff', 'Cs', 'Se', 'V'],
  'all-surfaces': ['F', 'E', 'V'],
} as const;

describe('a kit as the points lab sees it', () => {
  it.each(Object.entries(CONVENTIONS))(
    '%s: counts, height, volume and paper as in the worked cases',
    (counting, counts) => {
      const { data } = labKit(eight, counting as keyof typeof CONVENTIONS, CM, {});
      for (const { id, measures, paperMm2 } of data.kinds) {
        const known = EXAMPLES.kinds[id as keyof typeof EXAMPLES.kinds];
        expect([id, measures]).toEqual([
          id,
          [...counts, 'hcm', 'vol10', 'pap10'].map((row) => known.measures[row as 'F']),
        ]);
        expect(Math.abs((paperMm2 ?? 0) - 100 * known.surface)).toBeLessThanOrEqual(1e-9 * 100 * known.surface);
      }
    },
  );

  it('whole tens of paper make a tie that is none, and of two cones 15 where each has 7', () => {
    const [tie, cones] = EXAMPLES.rounding;
    const { data, rows } = labKit(eight, 'all-surfaces', CM, {});
    const paper = rows.findIndex(({ id }) => id === 'paper');
    const of = (id: string) => data.kinds.find((one) => one.id === id);
    expect([of('cube'), of('cylinder')].map((one) => one?.measures[paper])).toEqual([tie?.cube, tie?.cylinder]);
    const unrounded = [of('cube'), of('cylinder')].map((one) => (one?.paperMm2 ?? 0) / 100);
    unrounded.forEach((value, k) => {
      const known = (tie?.unrounded as number[] | undefined)?.[k] ?? 0;
      expect(Math.abs(value - known)).toBeLessThanOrEqual(1e-9 * known);
    });
    expect(2 * (of('cone')?.measures[paper] ?? 0)).toBe(cones?.byPiece);
    expect(Math.floor((2 * (of('cone')?.paperMm2 ?? 0)) / 1000)).toBe(cones?.byBuild);
  });

  it('minutes are the teacher’s, and steps those of the challenge’s own rows', () => {
    const { data, rows } = labKit(
      challenge({ points: [{ id: 'h', measure: 'height', points: 3, per: 20, rounding: 'down' }] }),
      'flat-only',
      CM,
      { slab: 7 },
    );
    expect(data.kinds.map(({ minutes }) => minutes)).toEqual([7, null]);
    const at = rows.findIndex(({ id }) => id === 'height');
    expect([rows[at]?.per, data.kinds.map(({ measures }) => measures[at])]).toEqual([20, [1, 2]]);
  });

  it('an inch has its own steps, and a kind that cannot be made is left out', () => {
    const odd = kind('odd', { solid: 'cube', sizes: { edge: -3 } });
    const { data, rows, kinds, solids } = labKit(
      challenge({ kit: { ...KIT, kinds: [...KIT.kinds, odd] }, points: [] }),
      'flat-only',
      rulerOf('quarter-inch'),
      {},
    );
    expect(rows.map(({ per }) => per)).toEqual([1, 1, 1, 25.4, 25.4 ** 3, 25.4 ** 2]);
    // 50 mm are 1.97 inches; a slab of 60 x 40 x 30 has 10 800 mm2, 16.7 square inches, and 4.39 cubic ones.
    expect(data.kinds.map(({ id, measures }) => [id, ...measures])).toEqual([
      ['slab', 6, 12, 8, 1, 4, 16],
      ['cube', 6, 12, 8, 1, 7, 23],
    ]);
    expect([kinds.length, solids.size]).toEqual([2, 2]);
  });
});

describe('between a points table and the lab', () => {
  it('today’s points: rows on one measure added up, in steps of the lab, and what no piece has by itself', () => {
    const points = [
      { id: 'a', measure: 'height', points: 2, per: 10, rounding: 'down' },
      { id: 'b', measure: 'height', points: 3, per: 30, rounding: 'none' },
      { id: 'c', measure: 'base-area', points: -1, per: 100, rounding: 'down' },
      { id: 'd', measure: 'pieces', points: 5, per: 1, rounding: 'none' },
    ] as const;
    const { rows, data } = labKit(challenge({ points }), 'flat-only', CM, {});
    expect(rows.map(({ id }) => id)).toEqual(['faces', 'edges', 'corners', 'height', 'volume', 'paper', 'pieces']);
    const { rates, others } = todaysRates({ points }, rows);
    expect([rates, others]).toEqual([[0, 0, 0, 3, 0, 0, 5], ['base-area']]);
    // A slab stands 3 cm high, a cube 5: 3 x 3 + 5 and 3 x 5 + 5.
    expect(whoEarns(data, rates).perPiece.values).toEqual([14, 20]);
    expect(rows.filter(isCountedRow).map(({ id }) => id)).toEqual(['faces', 'edges', 'corners']);
  });

  it('points that were found become a table, and the challenge one that points decide', () => {
    const { rows, data } = labKit(eight, 'flat-and-curved-apart', CM, {});
    const counted = withRows(data, (row) => rows.some((one) => one.id === row && isCountedRow(one)));
    const even = mostEven(
      { data: counted, goal: 'share', per: 'piece', most: 10, negative: false, step: 1 },
      { branchesMost: 20_000 },
    );
    if (even.status !== 'found') throw new Error(even.status);
    // As in the worked case of five rows: 1 a flat face and 4 a curved surface.
    expect([even.rule.rates, even.rule.share]).toEqual([[1, 4, 0, 0], 2 / 3]);
    const rates = rows.map(({ id }) => even.rule.rates[counted.rows.indexOf(id)] ?? 0);
    const table = pointsTable(rows, rates);
    expect(table).toEqual([
      { id: 'faces', measure: 'faces', points: 1, per: 1, rounding: 'none' },
      { id: 'curved-surfaces', measure: 'curved-surfaces', points: 4, per: 1, rounding: 'none' },
    ]);
    const changed = underPoints(eight, table, 'flat-and-curved-apart');
    expect(changed).toMatchObject({
      id: 'tall',
      points: table,
      ranking: { first: { by: 'points' }, tieBreaks: [{ by: 'height' }] },
    });
    expect(underPoints(changed, [], 'flat-only').ranking).toEqual(changed.ranking);
    expect(pointsTable([{ id: 'height', per: 10 }], [2])).toEqual([
      { id: 'height', measure: 'height', points: 2, per: 10, rounding: 'down' },
    ]);
  });

  it('the cylinder is favoured by 1 a flat face and 5 a curved surface', () => {
    const { rows, data } = labKit(eight, 'flat-and-curved-apart', CM, {});
    const counted = withRows(data, (row) => rows.some((one) => one.id === row && isCountedRow(one)));
    const answer = favour(
      { data: counted, favourite: 'cylinder', lead: 1, most: 10, negative: false, step: 1 },
      { order: 'fewest-rows', rules: 1 },
      { branchesMost: 20_000 },
    );
    expect(answer).toMatchObject({ status: 'possible', rules: [{ rates: [1, 5, 0, 0], lead: 1 }] });
  });
});
