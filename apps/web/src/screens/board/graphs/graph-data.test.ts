import { demoClass } from '@cairnmark/demo';
import { rulerOf } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { staged } from '../for-tests.ts';
import { finestDivisionMm } from './graph-choice.ts';
import { againOf, buildDots, dotsOf, fewBars, recordsAreIn, stacksOf, usedKinds } from './graph-data.ts';

const { scene, lines } = staged(demoClass(), 'tall-light');

describe('the graphs of Tall Light', () => {
  it('a dot for each group that has a height, the lowest first; the Eiders, whose build fell, have none', () => {
    const dots = dotsOf(lines, scene).map(({ line, value }) => [line.group, Number(value.toFixed(3))]);
    expect(dots).toEqual([
      // Read as 31.7 and 32.5, and decided by a person to be 32.
      ['petrels', 32],
      ['fulmars', 34.7],
      ['terns', 34.9],
      ['gannets', 34.9],
      ['puffins', 37.9],
    ]);
  });

  it('dots of one division of the ruler stand on each other', () => {
    const groups = (division: number) =>
      stacksOf(dotsOf(lines, scene), division).map(({ dots }) => dots.map(({ line }) => line.group).join(' '));
    expect(groups(0.1)).toEqual(['petrels', 'fulmars', 'terns gannets', 'puffins']);
    expect(groups(1)).toEqual(['petrels', 'fulmars terns gannets', 'puffins']);
  });

  it('the first try and the best one: 27.0 and 37.9 cm for the Puffins, one try for the others', () => {
    const again = againOf(lines, scene);
    expect(again.filter(({ tries }) => tries > 1).map(({ line, first, best }) => [line.group, first, best])).toEqual([
      ['puffins', 27, 37.9],
    ]);
    expect(again.map(({ line }) => line.group)).toEqual(['puffins', 'terns', 'gannets', 'fulmars', 'petrels']);
  });

  it('a dot with base and height for each of the five builds', () => {
    const builds = buildDots(lines, scene);
    expect(builds).toHaveLength(5);
    // A triangular prism of edge 5 cm has a base of 10.8 cm2, a hexagonal one of edge 3 cm 23.4 cm2: sqrt(3)/4 a2, 3 sqrt(3)/2 a2.
    const puffins = builds.find(({ line }) => line.group === 'puffins')!;
    expect([puffins.base.toFixed(1), puffins.height.toFixed(1)]).toEqual(['23.4', '37.9']);
  });

  it('five builds of five pieces have 25 pieces; of many kinds the rest goes into one bar', () => {
    const used = usedKinds(lines, scene);
    const sum = (bars: typeof used) => bars.reduce((all, { pieces }) => all + pieces, 0);
    expect(sum(used)).toBe(25);
    expect(used.length).toBeGreaterThan(4);
    const few = fewBars(used, 4);
    expect(few).toHaveLength(4);
    expect(few.at(-1)?.kind).toBeNull();
    expect(sum(few)).toBe(25);
    const left = used.filter(({ kind }) => !few.some((bar) => bar.kind === kind)).map(({ pieces }) => pieces);
    expect(Math.max(...left)).toBeLessThanOrEqual(Math.min(...few.slice(0, 3).map(({ pieces }) => pieces)));
    expect(fewBars(used, null)).toBe(used);
  });

  it('the records are in when no group has still to build or to be confirmed', () => {
    expect(recordsAreIn(lines)).toBe(true);
    const late = lines.map((line, k) =>
      k === 0 ? { ...line, standing: { ...line.standing, out: [{ code: 'not-confirmed' as const }] } } : line,
    );
    expect(recordsAreIn(late)).toBe(false);
    expect(recordsAreIn([])).toBe(false);
  });
});

describe('the divisions that a grade reads', () => {
  it('whole cm and quarters of an inch for the youngest, eighths after that, and never finer than the ruler', () => {
    const finest = (ruler: Parameters<typeof rulerOf>[0], preset: Parameters<typeof finestDivisionMm>[1]) =>
      finestDivisionMm(rulerOf(ruler), preset);
    expect(finest('mm', 'grades-2-3')).toBe(10);
    expect(finest('mm', 'grades-4-5')).toBe(1);
    expect(finest('sixteenth-inch', 'grades-2-3')).toBe(25.4 / 4);
    expect(finest('sixteenth-inch', 'grades-4-5')).toBe(25.4 / 8);
    expect(finest('sixteenth-inch', 'grades-6-8')).toBe(25.4 / 16);
    expect(finest('half-inch', 'grades-6-8')).toBe(25.4 / 2);
  });
});
