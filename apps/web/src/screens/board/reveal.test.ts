import { describe, expect, it } from 'vitest';
import { isRevealed, placesToReveal, stepped } from './reveal.ts';

// 1, 2, 2, 4 and one that takes no place.
const standings = [{ place: 1 }, { place: 2 }, { place: 2 }, { place: 4 }, { place: null }];
const places = placesToReveal(standings);
const shownAfter = (revealed: number | null): (number | null)[] =>
  standings.filter((one) => isRevealed(one, places, revealed)).map(({ place }) => place);

describe('places shown one by one', () => {
  it('go from the last to the first', () => {
    expect(places).toEqual([4, 2, 1]);
  });

  it('begin with those that take no place', () => {
    expect(shownAfter(0)).toEqual([null]);
  });

  it('show all who share a place together', () => {
    expect(shownAfter(1)).toEqual([4, null]);
    expect(shownAfter(2)).toEqual([2, 2, 4, null]);
    expect(shownAfter(3)).toEqual([1, 2, 2, 4, null]);
  });

  it('are all shown when nothing is hidden', () => {
    expect(shownAfter(null)).toEqual([1, 2, 2, 4, null]);
  });

  it('go no further than all and no further back than none', () => {
    expect([stepped(0, 1, places), stepped(3, 1, places), stepped(2, -1, places), stepped(0, -1, places)]).toEqual([
      1, 3, 1, 0,
    ]);
  });
});
