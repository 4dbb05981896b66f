import { readFileSync } from 'node:fs';
import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { decode } from '@cairnmark/formats';
import { exactSum } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { barOf, NO_ERROR, reachOf } from './bars.ts';
import { scored, staged } from './for-tests.ts';
import { partsOf } from './parts.ts';

function everyRule(): ClassRecord {
  const text = readFileSync(new URL('../../../../../tests/corpus/every-rule.json', import.meta.url), 'utf8');
  const decoded = decode(text, 'class');
  if (!decoded.ok) throw new RangeError('every-rule.json is refused');
  return decoded.value.value;
}

/** The demo with Tall Light ranked by its points, one for each whole cm of height. */
function byPoints(fallen: Challenge['fallen'] = { counts: 'out' }): ClassRecord {
  const record = demoClass();
  const challenges = record.challenges.map((one): Challenge => {
    const first = { by: 'points', better: 'more', roundTo: 1 } as const;
    return one.id === 'tall-light' ? { ...one, fallen, ranking: { first, tieBreaks: [] } } : one;
  });
  return { ...record, challenges };
}

const barsOf = (id: string, unitSize: number) => {
  const { scene, lines } = staged(demoClass(), id);
  return new Map(lines.map((line) => [line.group, barOf(line, scene.challenge, unitSize)]));
};

describe('the parts of a build’s points', () => {
  it('add up to its total, in every build of the demo and of the class with every rule', () => {
    for (const record of [demoClass(), everyRule()]) {
      const { reports } = scored(record);
      const told = record.challenges.flatMap((challenge) =>
        (reports.get(challenge.id) ?? []).map((report) => ({
          attempt: report.attempt,
          total: report.total,
          sum: report.total === null ? null : exactSum(partsOf(report, challenge).map(({ points }) => points)),
        })),
      );
      expect(told.length).toBeGreaterThan(12);
      for (const { attempt, total, sum } of told) expect([attempt, sum]).toEqual([attempt, total]);
    }
  });
});

describe('bars', () => {
  const wall = barsOf('harbour-wall', 1);

  it('are one piece for a measure, in the unit that is shown, with its error', () => {
    const bar = barsOf('tall-light', 10).get('puffins');
    expect(bar?.segments).toEqual([{ part: 'measure', from: 0, to: 37.9 }]);
    expect(bar?.value).toBe(37.9);
    // One reading of a ruler: 3 mm.
    expect(bar?.error).toEqual({ below: 0.3, above: 0.3 });
    expect(bar?.takenOff).toBeNull();
  });

  it('set the parts of points end to end', () => {
    const bar = wall.get('fulmars');
    // Courtyard 22, perimeter 7, volume 12, idea 7, craft 6.
    expect(bar?.segments.map(({ from, to }) => [from, to])).toEqual([
      [0, 22],
      [22, 29],
      [29, 41],
      [41, 48],
      [48, 54],
    ]);
  });

  it('reach back from what was earned to the total where something is taken off', () => {
    // Eiders: 12 + 17 + 6 + 4 are 39; 17 pieces cost 5.
    const bar = wall.get('eiders');
    expect(bar?.segments.at(-1)?.to).toBe(39);
    expect(bar?.takenOff).toEqual({ from: 34, to: 39, parts: ['rules'] });
    expect(bar?.value).toBe(34);
  });

  it('show what points in steps could be at the two ends of the error', () => {
    // Terns and Puffins stand 349 and 379 mm high, read to 3 mm: with a point for each whole cm, 35 and 38 are within reach.
    const record = byPoints();
    const { scene, lines } = staged(record, 'tall-light');
    const errors = new Map(lines.map((line) => [line.group, barOf(line, scene.challenge, 1)?.error]));
    expect(errors.get('puffins')).toEqual({ below: 0, above: 1 });
    expect(errors.get('terns')).toEqual({ below: 0, above: 1 });
  });

  it('show no error of points that are stated for a build that fell', () => {
    const record = byPoints({ counts: 'points', points: 3 });
    const { scene, lines } = staged(record, 'tall-light');
    const eiders = lines.find(({ group }) => group === 'eiders');
    expect(eiders && barOf(eiders, scene.challenge, 1)).toMatchObject({ value: 3, error: NO_ERROR });
  });

  it('are not drawn for those of whom nothing counts', () => {
    expect(wall.get('petrels')).toBeNull();
  });

  it('give the ruler its reach: errors beyond the longest bar, and below 0 only for values that are', () => {
    const bar = { segments: [], takenOff: null, value: 2, error: { below: 3, above: 3 } };
    expect(reachOf([bar])).toEqual({ least: 0, most: 5 });
    expect(reachOf([{ ...bar, value: -2 }])).toEqual({ least: -5, most: 1 });
    const off = { segments: [{ part: 'own' as const, from: 0, to: 4 }], takenOff: { from: -1, to: 4, parts: [] } };
    expect(reachOf([{ ...off, value: -1, error: NO_ERROR }])).toEqual({ least: -1, most: 4 });
    expect(reachOf([{ ...bar, error: { below: 0, above: 1 } }])).toEqual({ least: 0, most: 3 });
    expect(reachOf([])).toEqual({ least: 0, most: 0 });
  });
});
