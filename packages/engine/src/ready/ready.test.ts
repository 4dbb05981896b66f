import { MOST_PIECES, rulerOf } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { challengeIssues } from '../check/challenge.ts';
import { kitIssues } from '../check/kit.ts';
import { READY_KINDS, readyKit } from './kits.ts';
import { READY_IDS } from './plans.ts';
import { readyChallengeFor } from './ready.ts';

const NAMES = {
  cube: 'Cube',
  cuboid: 'Cuboid',
  'triangular-prism': 'Triangular prism',
  'hexagonal-prism': 'Hexagonal prism',
  'square-pyramid': 'Square pyramid',
  cylinder: 'Cylinder',
  cone: 'Cone',
  ball: 'Ball',
};

describe('the kit to begin with', () => {
  it('is in order, and has enough for every group', () => {
    const kit = readyKit('Paper solids', NAMES, 7, 'cm');
    expect(kitIssues(kit, [])).toEqual([]);
    expect(kit.kinds.map(({ id }) => id)).toEqual(READY_KINDS);
    expect(kit.kinds.map(({ stock }) => stock)).toEqual([28, 21, 21, 14, 14, 21, 14, 7]);
  });

  it('has sizes that an inch ruler reads, for a class that measures in inches', () => {
    const kit = readyKit('Paper solids', NAMES, 7, 'in');
    expect(kitIssues(kit, [])).toEqual([]);
    const quarters = kit.kinds.flatMap(({ solid: { sizes } }) =>
      Object.entries(sizes).flatMap(([name, size]) => (name === 'sides' ? [] : [size / (25.4 / 4)])),
    );
    expect(quarters.length).toBeGreaterThan(READY_KINDS.length);
    // Of multiplying and dividing by 25.4 alone: far below what any ruler shows.
    for (const quarter of quarters) expect(Math.abs(quarter - Math.round(quarter))).toBeLessThan(1e-12 * quarter);
  });

  it('never has more of a kind than a kit may hold', () => {
    const stocks = readyKit('Paper solids', NAMES, MOST_PIECES / 3, 'cm').kinds.map(({ stock }) => stock);
    expect(Math.max(...stocks)).toBe(MOST_PIECES);
  });
});

describe('a challenge that is ready to run', () => {
  const kit = readyKit('Paper solids', NAMES, 6, 'cm');

  it.each(READY_IDS)('%s is in order for every grade, in cm and in inches', (id) => {
    for (const grade of ['grades-2-3', 'grades-4-5', 'grades-6-8'] as const) {
      for (const units of ['cm', 'in'] as const) {
        const challenge = readyChallengeFor(id, 'Ready', kit, null, { grade, units });
        expect(challengeIssues(challenge, [])).toEqual([]);
        expect(challenge.gradePreset).toBe(grade);
        expect(rulerOf(challenge.ruler).unit === 'in').toBe(units === 'in');
      }
    }
  });

  it('is ranked by whole divisions of its own ruler', () => {
    const inches = readyChallengeFor('tallest', 'Tallest', kit, 5, { grade: 'grades-4-5', units: 'in' });
    expect(inches.ranking.first).toEqual({ by: 'height', better: 'more', roundTo: 25.4 / 4 });
  });

  it('in inches compares areas and volumes in whole square and cubic inches, not in centimetres', () => {
    const steps = (units: 'cm' | 'in') =>
      READY_IDS.flatMap((id) => {
        const { first, tieBreaks } = readyChallengeFor(id, 'Ready', kit, null, { units }).ranking;
        return [first, ...tieBreaks].filter(({ by }) => ['base-area', 'courtyard-area', 'volume'].includes(by));
      }).map(({ roundTo }) => roundTo);
    expect(steps('cm')).toEqual([100, 100, 1000]);
    expect(steps('in')).toEqual([25.4 ** 2, 25.4 ** 2, 25.4 ** 3]);
  });
});
