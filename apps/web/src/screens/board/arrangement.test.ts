import { describe, expect, it } from 'vitest';
import { arranged, sharers } from './arrangement.ts';
import { comparedWith } from './compared.ts';

const ROWS = [
  { group: 'terns', place: 1 },
  { group: 'eiders', place: 2 },
  { group: 'gannets', place: 2 },
  { group: 'puffins', place: 4 },
  { group: 'petrels', place: null },
];
const ORDER = ['puffins', 'terns', 'gannets', 'eiders', 'petrels'];
const groups = (pages: readonly (readonly { group: string }[])[]): string[] => pages.flat().map(({ group }) => group);
const [terns, eiders, gannets, puffins, petrels] = ROWS;

describe('the rows of a board', () => {
  it('stand in the order of the places', () => {
    expect(groups(arranged(ROWS, ORDER, false, 12))).toEqual(ROWS.map(({ group }) => group));
  });

  it('stand in the order of the class while places are hidden, so that the order tells none', () => {
    expect(groups(arranged(ROWS, ORDER, true, 12))).toEqual(ORDER);
  });

  it('know how many share a place; no place is not shared', () => {
    expect(ROWS.map((row) => sharers(row, ROWS))).toEqual([1, 2, 2, 1, 1]);
  });
});

describe('why a place', () => {
  it('is told against the next better place, whoever shares the own one', () => {
    expect(comparedWith(gannets!, ROWS)).toEqual([terns, gannets]);
    expect(comparedWith(puffins!, ROWS)).toEqual([gannets, puffins]);
  });

  it('is told of the first against the next below', () => {
    expect(comparedWith(terns!, ROWS)).toEqual([terns, eiders]);
  });

  it('is not told where there is no other place, or none at all', () => {
    expect(comparedWith(petrels!, ROWS)).toBeNull();
    expect(comparedWith(terns!, [terns!, petrels!])).toBeNull();
  });
});
