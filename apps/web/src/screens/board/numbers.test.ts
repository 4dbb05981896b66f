import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { csvText } from '@cairnmark/formats';
import { cardWords, wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { dayRows } from './day.ts';
import type { Staged } from './for-tests.ts';
import { scored, staged } from './for-tests.ts';
import { fileRows, numberColumns } from './numbers.ts';

const TALL = staged(demoClass(), 'tall-light');

function fileOf({ scene, lines }: Staged, withPlaces = true): string[] {
  const text = csvText(fileRows(numberColumns(lines, scene, withPlaces), lines));
  expect(text.codePointAt(0)).toBe(0xfeff);
  return text.slice(1).trimEnd().split('\r\n');
}

describe('the table of a challenge as a file', () => {
  it('has units in its titles, decimal points, and nothing for what there is not', () => {
    expect(fileOf(staged(demoClass(), 'narrow-rock')).slice(0, 3)).toEqual([
      'Place,Group,Try,Height (cm),Area on the table (cm²),Measuring error (cm),Points for height,Points for area on the table,Points,Notes',
      '1,Terns,1,37.9,10.83,0.3,37,-10,27,within measuring error of Gannets',
      '2,Gannets,1,37.9,23.38,0.3,37,-23,14,within measuring error of Terns',
    ]);
  });

  it('tells an absent group apart from one with 0', () => {
    const lines = fileOf(staged(demoClass(), 'harbour-wall'));
    expect(lines.at(-1)).toBe(',Petrels,,,,,,,,,,,,Absent: no result. That is not 0.');
    expect(lines.at(-2)).toMatch(/^5,Eiders,1,0,/);
  });

  it('has no value of a build that fell', () => {
    expect(fileOf(TALL).at(-1)).toBe(',Eiders,1,,,,,Fell after 2 seconds.');
  });

  it('tells no place while places are hidden', () => {
    const text = fileOf(TALL, false).join('\n');
    expect(text).not.toMatch(/Place|shared|within/);
    expect(text).toMatch(/^Group,Try,/);
  });

  it('is in inches for a class that reads inches', () => {
    const [titles, puffins] = fileOf(staged(demoClass(), 'tall-light', 'in'));
    expect(titles).toMatch(/Height \(in\)/);
    // 379 mm.
    expect(puffins).toMatch(/^1,Puffins,2,14\.921,/);
  });

  it('tells the error of a length as the ruler in inches reads it, never smaller than it is', () => {
    const { scene, lines } = staged(demoClass(), 'tall-light', 'in');
    const columns = numberColumns(lines, scene, true);
    const error = columns.find(({ title }) => title === 'Measuring error (in)');
    const height = columns.find(({ title }) => title === 'Height (in)');
    expect(lines.slice(0, 1).map((line) => [height?.cell(line).text, error?.cell(line).text])).toEqual([
      ['14 15/16', '1/8'],
    ]);
  });

  it('tells by how much points that go in steps may be less, and by how much more', () => {
    const [titles, , gannets, puffins] = fileOf(staged(demoClass(), 'harbour-wall'));
    expect(titles).toMatch(/,May be less by \(points\),May be more by \(points\),/);
    // 53 points may be two less and no more; the 52 are in no doubt, which is 0 and not nothing.
    expect(gannets).toMatch(/^2,Gannets,1,121,2,0,/);
    expect(puffins).toMatch(/^3,Puffins,1,96\.12,0,0,/);
  });

  it('has a title of its own for each of two rows of points on one measure', () => {
    const record = demoClass();
    const higher = { id: 'higher', measure: 'height', points: 5, per: 300, rounding: 'down' } as const;
    const challenges = record.challenges.map((one) => ({ ...one, points: [...one.points, higher] }));
    const [titles] = fileOf(staged({ ...record, challenges }, 'tall-light'));
    expect(titles).toMatch(/,"Height, 1 for every 1 cm","Height, 5 for every 30 cm",Points,/);
  });

  it('disarms the name of a group that a spreadsheet would take for a formula', () => {
    const { record } = TALL.scene;
    const groups = record.groups.map((one) => (one.id === 'puffins' ? { ...one, name: '=1+1' } : one));
    expect(fileOf({ ...TALL, scene: { ...TALL.scene, record: { ...record, groups } } })[1]).toMatch(
      /^1,'=1\+1,2,37\.9,/,
    );
  });
});

describe('the table of the day as a file', () => {
  it('while places are hidden has no results that are places, or points of places', () => {
    const record = demoClass();
    const score = scored(record);
    const rows = (kind: ClassRecord['day']['kind']) => {
      const scene = { record: { ...record, day: { ...record.day, kind } }, score };
      return dayRows(score.day, { ...scene, words: wordsFor('en'), screen: cardWords('en') }, false)[0];
    };
    expect([rows('sum-of-place-points'), rows('mean-place')]).toEqual([
      ['Group', 'Results'],
      ['Group', 'Results'],
    ]);
    expect(rows('sum-of-points')).toEqual([
      'Group',
      'Tall Light',
      'Narrow Rock',
      'Harbour Wall',
      'Together',
      'Results',
    ]);
  });

  it('has what each challenge brought, and nothing where there is no result', () => {
    const record = demoClass();
    const score = scored(record);
    const rows = dayRows(score.day, { record, score, words: wordsFor('en'), screen: cardWords('en') }, true);
    expect(rows[0]).toEqual(['Place', 'Group', 'Tall Light', 'Narrow Rock', 'Harbour Wall', 'Together', 'Results']);
    expect(rows[1]).toEqual([1, 'Gannets', 5, 5, 5, 15, '3 of 3']);
    expect(rows.at(-1)).toEqual([null, 'Petrels', 2, 3, null, null, '2 of 3']);
  });
});
