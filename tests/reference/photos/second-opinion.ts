// Corners of our markers in the photos of the towers, as we and as another finder see them.

import { findMarkers } from '@cairnmark/photo';
import type { Point2 } from './camera-of-truth.ts';
import { secondMarkers } from './opencv.ts';
import { readPhoto } from './truth.ts';

export interface Compared {
  /** Markers that both see, we alone, the other alone. */
  readonly both: number;
  readonly oursAlone: number;
  readonly othersAlone: number;
  /** px. From each of our corners to the other's of the same name. */
  readonly apartPx: readonly number[];
  /** px. The same for the means of the four corners: what draws all corners inwards or outwards is out of it. */
  readonly middlesApartPx: readonly number[];
}

export function comparedMarkers(photos: readonly (readonly [tower: string, view: 'top' | 'side'])[]): Compared {
  const others = secondMarkers(photos.map(([tower, view]) => `${tower}-${view}`));
  const pairs = photos.map(([tower, view], k) => {
    const [ours, theirs] = [findMarkers(readPhoto(tower, view)).markers, others[k]!];
    const both = ours.flatMap((our) => {
      const their = theirs.find(({ id }) => id === our.id);
      if (their === undefined) return [];
      return [our.corners.map(([u, v], i): Point2 => [u - their.corners[i]![0], v - their.corners[i]![1]])];
    });
    return { both, ours: ours.length - both.length, theirs: theirs.length - both.length };
  });
  const sum = (of: (pair: (typeof pairs)[number]) => number): number =>
    pairs.reduce((total, pair) => total + of(pair), 0);
  return {
    both: sum(({ both }) => both.length),
    oursAlone: sum(({ ours }) => ours),
    othersAlone: sum(({ theirs }) => theirs),
    apartPx: pairs.flatMap(({ both }) => both.flatMap((offs) => offs.map(([x, y]) => Math.hypot(x, y)))),
    middlesApartPx: pairs.flatMap(({ both }) =>
      both.map((offs) => Math.hypot(mean(offs.map(([x]) => x)), mean(offs.map(([, y]) => y)))),
    ),
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
