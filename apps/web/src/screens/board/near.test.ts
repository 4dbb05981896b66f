import { demoClass } from '@cairnmark/demo';
import { describe, expect, it } from 'vitest';
import { staged } from './for-tests.ts';
import { nearMarks, shownMarks, shownNear } from './near.ts';
import { nearTexts } from './texts.ts';

const marksOf = (challenge: string) => {
  const { scene, lines } = staged(demoClass(), challenge);
  return [...nearMarks(lines)].map(([group, near]) => {
    const line = lines.find((one) => one.group === group);
    return [group, near.next, line === undefined ? '' : nearTexts(near, line, scene).long];
  });
};

describe('neighbours closer than the ruler can tell', () => {
  it('are marked after the last row of the upper place, with what is between them', () => {
    // Gannets and Terns share the second place with 34.9 cm; Fulmars have 34.7 cm, each within 3 mm of error.
    expect(marksOf('tall-light')).toEqual([['terns', 'fulmars', 'Closer than the ruler can tell: 0.2 cm apart']]);
  });

  it('are marked where the same reading is parted by the tie-break', () => {
    expect(marksOf('narrow-rock')).toEqual([['terns', 'gannets', 'Closer than the ruler can tell: both 37.9 cm']]);
  });

  it('are marked in points where a step of a row lies within the error, and nowhere else', () => {
    // The terminal says the same of this board: Gannets near Puffins, Terns near Eiders, Fulmars near nobody.
    expect(marksOf('harbour-wall')).toEqual([
      ['gannets', 'puffins', 'Closer than the ruler can tell: 1 point apart'],
      ['terns', 'eiders', 'Closer than the ruler can tell: 2 points apart'],
    ]);
  });
});

describe('while places are shown one by one', () => {
  const { lines } = staged(demoClass(), 'tall-light');
  const withPlaceFrom = (least: number) => (line: (typeof lines)[number]) => line.place === null || line.place >= least;
  const fulmars = lines.find(({ group }) => group === 'fulmars');

  it('a mark between two places stands only when both are shown', () => {
    const marks = nearMarks(lines);
    expect([...shownMarks(marks, lines, withPlaceFrom(fulmars?.place ?? 0)).keys()]).toEqual([]);
    expect([...shownMarks(marks, lines, withPlaceFrom(2)).keys()]).toEqual(['terns']);
  });

  it('a group that is not shown yet is not named beside one that is near it', () => {
    if (fulmars === undefined) throw new RangeError('the demo has changed');
    const named = (least: number) => shownNear(fulmars, lines, withPlaceFrom(least)).withinErrorOf;
    expect(named(fulmars.place ?? 0)).toEqual([]);
    expect(named(2)).toEqual(fulmars.standing.withinErrorOf);
    expect(named(2)).toContain('terns');
  });
});
