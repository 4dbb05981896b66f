import { describe, expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../../tests/tools/within.ts';
import { FORT_PAGES, isWhite, MARKER_CELLS, MARKER_SIDE_MM, markersOf } from './ground-sheet.ts';

/**
 * The first 32 entries of DICT_4X4_1000_BYTES, unturned, in OpenCV's modules/aruco/src/predefined_dictionaries.hpp (3-clause
 * BSD): sixteen cells row by row, the first in the highest bit, 1 for white. DICT_4X4_50 is its beginning.
 */
const PUBLISHED: readonly (readonly [high: number, low: number])[] = [
  [181, 50],
  [15, 154],
  [51, 45],
  [153, 70],
  [84, 158],
  [121, 205],
  [158, 46],
  [196, 242],
  [254, 218],
  [207, 86],
  [249, 145],
  [17, 167],
  [14, 183],
  [42, 15],
  [36, 177],
  [38, 62],
  [70, 101],
  [102, 0],
  [108, 94],
  [118, 175],
  [134, 139],
  [176, 43],
  [204, 213],
  [221, 130],
  [254, 71],
  [148, 113],
  [172, 228],
  [165, 84],
  [33, 35],
  [52, 111],
  [68, 21],
  [87, 178],
];

const ALL = [0, 1, 2, 3].flatMap((page) => markersOf(page));

describe('the markers', () => {
  it('have the codes of the public dictionary, id by id', () => {
    const bytes = ALL.map(({ code }) => [Number.parseInt(code.slice(0, 8), 2), Number.parseInt(code.slice(8), 2)]);
    expect(bytes).toEqual(PUBLISHED);
    expect(ALL.map(({ id }) => id)).toEqual([...PUBLISHED.keys()]);
  });

  it('have a black border all round, and the code inside from the upper left', () => {
    for (const marker of ALL) {
      for (let k = 0; k < MARKER_CELLS; k += 1) {
        const border = [isWhite(marker, 0, k), isWhite(marker, 5, k), isWhite(marker, k, 0), isWhite(marker, k, 5)];
        expect(border).toEqual([false, false, false, false]);
      }
      expect(isWhite(marker, 1, 1)).toBe(marker.code[0] === '1');
      expect(isWhite(marker, 2, 3)).toBe(marker.code[6] === '1');
      expect(isWhite(marker, 4, 4)).toBe(marker.code[15] === '1');
    }
  });

  it('stand on every page alike, clockwise from the upper left, and leave 200 by 124 mm free', () => {
    const [first = [], ...others] = [0, 1, 2, 3].map((page) => markersOf(page).map(({ centreMm }) => centreMm));
    expect(others).toEqual([first, first, first]);
    const [upperLeft, upper, , right] = first;
    expectPointNear(upperLeft ?? [], [-116, 78], 0);
    expectPointNear([right![0] - upperLeft![0] - MARKER_SIDE_MM, 2 * upper![1] - MARKER_SIDE_MM], [200, 124], 0);
    const turns = first.map(([x, y]) => Math.atan2(y, x));
    expect(turns.filter((turn, k) => turn > (turns.at(k - 1) ?? 0))).toHaveLength(1);
  });

  it('of Letter end 7.7 mm from its edge', () => {
    const reach = Math.max(...ALL.map(({ centreMm }) => centreMm[0])) + MARKER_SIDE_MM / 2;
    expectNear(279.4 / 2 - reach, 7.7, { absolute: 1e-9 });
  });
});

it('there is no fifth page, and none between two', () => {
  for (const page of [-1, FORT_PAGES, 0.5]) expect(() => markersOf(page)).toThrow(RangeError);
});
