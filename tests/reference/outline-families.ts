// Seeded families of outlines that break union code: near-coincident, tangent, touching, self-crossing, far away; mm.
// Gathered from failures of published libraries; nothing here depends on the code under test.

import type { Outline, Vec2 } from '@cairnmark/geometry';
import type { Dice } from './dice.ts';
import { diceOf, times } from './dice.ts';
import { box, disc, moved, ngon, polygon, shift, turn } from './outline-shapes.ts';
import { degenerateRing, tracedRing } from './traced-rings.ts';

export const FAMILIES = {
  'coincident copies': ({ whole, oneOf, between }) => {
    const one = ngon(0, 0, between(10, 50), whole(3, 12), between(0, 7));
    return times(whole(2, 5), () => {
      const start = whole(0, one.points.length - 1);
      const points = [...one.points.slice(start), ...one.points.slice(0, start)];
      return polygon(oneOf([points, points.reverse()]));
    });
  },
  'boxes on a grid': ({ whole, oneOf }) => {
    const step = oneOf([1, 10, 0.1, 25.4, 10 / 3]);
    return times(whole(3, 14), () =>
      box(step * whole(0, 6), step * whole(0, 6), step * whole(1, 4), step * whole(1, 4)),
    );
  },
  'tangent polygons': ({ whole, between, oneOf }) => {
    const [corners, radius, tilt] = [oneOf([16, 32, 64]), between(5, 30), oneOf([0, between(0, 1)])];
    const count = whole(2, 4);
    return times(count, (k) => moved(ngon(2 * radius * k, 0, radius, corners, 0), turn(tilt)));
  },
  'shifted a little': ({ whole, between }) => {
    const one = ngon(0, 0, between(10, 50), whole(3, 9), between(0, 7));
    return times(whole(2, 6), () => {
      const by = 10 ** between(-9, -6);
      return moved(one, shift(between(-by, by), between(-by, by)));
    });
  },
  'turned a little': ({ whole, between }) => {
    const [corners, radius] = [whole(3, 12), between(10, 50)];
    return times(whole(2, 5), () =>
      ngon(0, 0, radius, corners, (whole(0, 8) * Math.PI) / corners + 10 ** between(-10, -5)),
    );
  },
  slivers: ({ whole, between }) =>
    times(whole(3, 9), () => {
      const sliver = box(0, 0, between(5, 60), 10 ** between(-7, -2));
      return moved(moved(sliver, turn(between(0, 7))), shift(between(0, 20), between(0, 20)));
    }),
  'rings that close a hole': ({ whole, between, oneOf }) => {
    const [count, side, spacing] = [whole(3, 9), between(5, 20), oneOf([1, 1.1, 0.999999999, 1.0000001])];
    const out = (spacing * side) / (2 * Math.tan(Math.PI / count)) + side / 2;
    const tilt = oneOf([0, between(0, 1)]);
    return times(count, (k) => {
      const piece = oneOf([0, 1]) === 0 ? box(-side / 2, -side / 2, side, side) : disc(0, 0, (side * spacing) / 2);
      return moved(moved(piece, shift(out, 0)), turn(tilt + (2 * Math.PI * k) / count));
    });
  },
  'traced rings': (dice) => times(dice.whole(1, 2), () => tracedRing(dice)),
  'degenerate rings': (dice) => times(dice.whole(1, 4), () => degenerateRing(dice)),
  'far from the origin': ({ whole, between }) => {
    const far = shift(10 ** between(4, 7), -(10 ** between(4, 7)));
    return times(whole(2, 7), () =>
      moved(ngon(between(0, 50), between(0, 50), between(10, 30), whole(3, 8), between(0, 7)), far),
    );
  },
  towers: ({ whole, between, oneOf }) =>
    times(whole(3, 12), () => {
      const [x, y, radius] = [between(0, 3), between(0, 3), between(18, 25)];
      return oneOf([0, 1, 2]) === 0 ? disc(x, y, radius) : ngon(x, y, radius, whole(3, 8), (whole(0, 3) * Math.PI) / 4);
    }),
  fans: ({ whole, between }) => {
    const [x, y] = [between(-9, 9), between(-9, 9)];
    return times(whole(3, 14), () => {
      const from = between(0, 6);
      const [near, past] = [between(5, 30), from + between(0.1, 1.5)];
      return polygon([
        [x, y],
        [x + near * Math.cos(from), y + near * Math.sin(from)],
        [x + near * Math.cos(past), y + near * Math.sin(past)],
      ]);
    });
  },
  'turned hexagon tilings': ({ whole, between }) => {
    const [side, tilt] = [between(8, 20), between(0, 2)];
    return times(whole(3, 12), () => {
      const [column, row] = [whole(-2, 2), whole(-2, 2)];
      const centre: Vec2 = [1.5 * side * column, Math.sqrt(3) * side * (row + column / 2)];
      return moved(ngon(...centre, side, 6, 0), turn(tilt));
    });
  },
  'boxes meeting at corners': ({ whole, between, oneOf }) => {
    const [side, tilt] = [oneOf([1, 10, 25.4]), oneOf([0, between(0, 1)])];
    const cells = times(whole(3, 10), () => [whole(0, 4), whole(0, 4)] as const);
    return cells.map(([i, j]) => moved(box(side * i, side * (2 * j + (i % 2)), side, side), turn(tilt)));
  },
  'pairs along a side': (dice) => alongASide(dice).outlines,
  rounds: (dice) => rounds(dice),
} satisfies Record<string, (dice: Dice) => readonly Outline[]>;

export type Family = keyof typeof FAMILIES;

/** One case of a family. */
export function outlinesOf(family: Family, seed: number): readonly Outline[] {
  return FAMILIES[family](diceOf(seed));
}

/**
 * Two turned boxes along one side, with a gap between (an overlap with `sign` -1), and the length of side they share. The
 * second box is turned by `leanRad` more, about the middle of the shared stretch.
 */
export function alongASide({ between, oneOf }: Dice, sign = 1, leanRad = 0): SharedSide {
  const [widthA, widthB, tilt] = [between(20, 60), between(20, 60), between(0, 7)];
  const gap = sign * oneOf([0, 1e-9, 1e-5, 3e-4, 0.02]);
  const from = between(-0.8 * widthB, 0.8 * widthA);
  const [start, end] = [Math.max(0, from), Math.min(widthA, from + widthB)];
  const [middle, place] = [(start + end) / 2, turn(tilt)];
  const second = moved(moved(box(from - middle, 0, widthB, 25), turn(leanRad)), shift(middle, gap));
  return {
    outlines: [moved(box(0, -30, widthA, 30), place), moved(second, place)],
    gap,
    shared: end - start,
  };
}

interface SharedSide {
  readonly outlines: readonly [Outline, Outline];
  readonly gap: number;
  readonly shared: number;
}

function rounds({ between, whole, oneOf }: Dice): readonly Outline[] {
  const [r, x, y, u] = [between(5, 40), between(-9, 9), between(-9, 9), oneOf([1e-6, 1e-9])];
  return oneOf([
    [disc(x, y, r), disc(x + 2 * r - oneOf([0, 0.01]), y, r)],
    [disc(0, 0, r), disc(0, 0, r - 2 * u), disc(-2 * u, 0, r - 2 * u)],
    [disc(x, y, r), box(x - r, y - r, 2 * r, 2 * r)],
    [box(x, y, r, r), disc(x, y, r / 2)],
    [box(x - r, y - r, 2 * r, 2 * r), disc(x, y, 1.2 * r)],
    [disc(0, 0, r), disc(r, 0, r), disc(r / 2, (Math.sqrt(3) / 2) * r, r)],
    times(whole(3, 9), () => disc(between(0, 60), between(0, 60), between(5, 25))),
    times(whole(3, 9), () => ngon(between(0, 60), between(0, 60), between(5, 25), 5, between(0, 7))).flatMap(
      (one, k) => (k % 2 === 0 ? [one] : [one, disc(between(0, 60), between(0, 60), between(5, 25))]),
    ),
  ]);
}
