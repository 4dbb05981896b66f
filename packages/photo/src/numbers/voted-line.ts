// The straight line that most of a row of places agree on, where each place offers several values and some none. All lines through two
// values far enough apart are tried (Fischler and Bolles 1981, without the lot), the best is fitted to what lies on it.

/** Value at a place: offset = middle + slope * along. */
export interface VotedLine {
  readonly middle: number;
  readonly slope: number;
  /** Share of the places with a value on the line. */
  readonly support: number;
  /** The support less the cost: by how much one line is preferred to another. */
  readonly worth: number;
}

export interface Place {
  readonly along: number;
  readonly values: readonly number[];
}

export interface LineSearch {
  /** Two values must lie this far apart along the row to make a line. */
  readonly leastApart: number;
  readonly mostSlope: number;
  /** A value this near to a line is on it. */
  readonly nearness: number;
  /** What a line costs, against 1 for the support of all places. */
  readonly cost: (middle: number, slope: number) => number;
}

/** Null where no two places offer a value. */
export function votedLine(places: readonly Place[], search: LineSearch): VotedLine | null {
  const { leastApart, mostSlope, nearness, cost } = search;
  let best: VotedLine | null = null;
  for (const { along: from, values } of places) {
    for (const { along: to, values: others } of places) {
      if (to - from < leastApart) continue;
      for (const value of values) {
        for (const other of others) {
          const slope = (other - value) / (to - from);
          if (Math.abs(slope) > mostSlope) continue;
          const middle = value - slope * from;
          const support = supportOf(places, middle, slope, nearness);
          const worth = support - cost(middle, slope);
          if (worth <= (best?.worth ?? Number.NEGATIVE_INFINITY)) continue;
          best = { middle, slope, support, worth };
        }
      }
    }
  }
  return best && fitted(places, best, nearness);
}

/** The same of what does not lie on that line: another edge that may have been meant. */
export function rivalOf({ middle, slope }: VotedLine, places: readonly Place[], search: LineSearch): VotedLine | null {
  const others = places.map(({ along, values }) => ({
    along,
    values: values.filter((value) => Math.abs(value - middle - slope * along) > search.nearness),
  }));
  return votedLine(others, search);
}

function supportOf(places: readonly Place[], middle: number, slope: number, nearness: number): number {
  let votes = 0;
  for (const { along, values } of places) {
    for (const value of values) {
      if (Math.abs(value - middle - slope * along) > nearness) continue;
      votes += 1;
      break;
    }
  }
  return votes / places.length;
}

/** By least squares through what lies on it. */
function fitted(places: readonly Place[], line: VotedLine, nearness: number): VotedLine {
  const { middle, slope } = line;
  const on = places.flatMap(({ along, values }) =>
    values.filter((value) => Math.abs(value - middle - slope * along) <= nearness).map((value) => ({ along, value })),
  );
  const mean = (of: 'along' | 'value'): number => on.reduce((sum, one) => sum + one[of], 0) / on.length;
  const [x, y] = [mean('along'), mean('value')];
  let [xx, xy] = [0, 0];
  for (const { along, value } of on) {
    xx += (along - x) ** 2;
    xy += (along - x) * (value - y);
  }
  const better = xx > 0 ? xy / xx : slope;
  return { ...line, middle: y - better * x, slope: better };
}
