// Second method for the union of polygons, without a boolean library: an exact arrangement. Corners are whole numbers of a
// grid; all decisions (on which side, where sides cross, what is inside) are made in whole-number arithmetic, never rounded.
// Every side is parted where another meets it; a part bounds the union when just one side of it is inside some ring.
// Rings by the non-zero rule. Only the sums at the end are in floating point. Written without the code under test.

import type { Fraction } from './exact-segment.ts';
import { cutsOf, isOn, middleOf, segmentsOf, turnsAround } from './exact-segment.ts';

type Ring = readonly (readonly [number, number])[];

export interface ExactUnion {
  readonly areaMm2: number;
  readonly perimeterMm: number;
}

/** Area and perimeter of the union of rings whose coordinates are whole multiples of `grid` mm. */
export function exactUnion(rings: readonly Ring[], grid: number): ExactUnion {
  const segments = rings.map((ring) => segmentsOf(ring, grid));
  const all = segments.flat();
  const [originX, originY] = rings[0]?.[0] ?? [0, 0];
  let [areaMm2, perimeterMm] = [0, 0];
  all.forEach((segment, index) => {
    const places = cutsOf(segment, all);
    for (const [k, to] of places.entries()) {
      const from = places[k - 1];
      if (from === undefined) continue;
      const middle = middleOf(segment, from, to);
      if (all.some((other, earlier) => earlier < index && isOn(other, middle))) continue;
      const left = segments.some((ring) => turnsAround(ring, middle, segment, 1) !== 0);
      const right = segments.some((ring) => turnsAround(ring, middle, segment, -1) !== 0);
      if (left === right) continue;
      const lengthMm = share(from, to) * Math.hypot(segment.bx - segment.ax, segment.by - segment.ay) * grid;
      const twiceMm2 =
        share(from, to) *
        ((segment.ax * grid - originX) * (segment.by - segment.ay) -
          (segment.ay * grid - originY) * (segment.bx - segment.ax)) *
        grid;
      areaMm2 += ((left ? 1 : -1) * twiceMm2) / 2;
      perimeterMm += lengthMm;
    }
  });
  return { areaMm2, perimeterMm };
}

/** How much of a segment lies between two places on it. */
const share = (from: Fraction, to: Fraction): number =>
  Number(to.above * from.below - from.above * to.below) / Number(to.below * from.below);
