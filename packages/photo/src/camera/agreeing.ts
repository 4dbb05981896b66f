// Which markers lie on one sheet, so that a false or a moved one does not lead the fit astray. Source: consensus of small samples,
// Fischler and Bolles, Random sample consensus, 1981; with so few markers all pairs are tried, so nothing is left to chance.

import type { Vec2 } from '@cairnmark/geometry';
import type { Quad } from '../find/quadrilateral.ts';
import { homographyOf, mapBy } from '../numbers/homography.ts';

/** A marker with the places of its corners on the table, as far as they are known, and in the picture. */
export interface Seen {
  readonly id: number;
  readonly page: number;
  /** Its corners on its own page, mm. */
  readonly onPageMm: Quad;
  /** The same on the table, with the page where it should lie. */
  readonly onTableMm: Quad;
  readonly cornersPx: Quad;
}

/** The largest set of markers that one flat sheet explains to within `slackPx`; in their order. */
export function agreeing(seen: readonly Seen[], slackPx: number): readonly Seen[] {
  let best: readonly Seen[] = [];
  for (let i = 0; i < seen.length; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const [first, second] = [seen[i], seen[j]];
      if (first === undefined || second === undefined) continue;
      const together = followers(first, second, seen, slackPx);
      if (together.length > best.length) best = together;
    }
  }
  return best;
}

function followers(first: Seen, second: Seen, seen: readonly Seen[], slackPx: number): readonly Seen[] {
  const map = homographyOf([...first.onTableMm, ...second.onTableMm], [...first.cornersPx, ...second.cornersPx]);
  if (map === null) return [];
  return seen.filter(({ onTableMm, cornersPx }) =>
    onTableMm.every((point, k) => distance(mapBy(map, point), cornersPx[k] ?? [0, 0]) <= slackPx),
  );
}

const distance = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
