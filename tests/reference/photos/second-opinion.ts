// Corners of our markers in the photos of the towers, as we and as another finder see them.

import { findMarkers, MARKER_SIDE_MM, markersOf, positionOf, readSheet } from '@cairnmark/photo';
import type { Point2 } from './camera-of-truth.ts';
import { secondLenses, secondMarkers } from './opencv.ts';
import { readPhoto, readTower } from './truth.ts';

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

/**
 * How far apart the lens is found, as a share of its way to the sheet: by us from all we know, by the other from the corners that it found, with our focal length
 * and lens. Photos in which it sees fewer than three markers are left out.
 */
export function comparedPoses(photos: readonly (readonly [tower: string, view: 'top' | 'side'])[]): readonly number[] {
  const others = secondMarkers(photos.map(([tower, view]) => `${tower}-${view}`));
  const ours = photos.map(([tower, view], k) => {
    const { paper } = readTower(tower);
    const read = readSheet(readPhoto(tower, view), { kind: 'ground', paper, pages: 1, printScale: 1 }, NO_FOCAL);
    if (!read.ok) throw new Error(`${tower}, ${view}: ${JSON.stringify(read.issues)}`);
    const camera = read.value;
    const points = others[k]!.filter(({ id }) => camera.markers.includes(id)).flatMap(({ id, corners }) => {
      const [x, y] = markersOf(0)[id]!.centreMm;
      return corners.map((corner, i) => [[x + SIDES[i]![0], y + SIDES[i]![1]], corner] as const);
    });
    const { focalPx, k1, widthPx, heightPx } = camera;
    return { camera, ask: { focalPx, k1, middlePx: [widthPx / 2, heightPx / 2] as const, points } };
  });
  // One marker alone does not hold a pose.
  const held = ours.filter(({ ask }) => ask.points.length >= 12);
  const lenses = secondLenses(held.map(({ ask }) => ask));
  return held.map(({ camera }, k) => {
    const lens = positionOf(camera);
    const apart = Math.hypot(...lens.map((value, axis) => value - lenses[k]![axis]!));
    return apart / Math.hypot(...lens);
  });
}

const NO_FOCAL = { focal35Mm: null };
const HALF = MARKER_SIDE_MM / 2;
/** Corners from the upper left on, clockwise as printed. */
const SIDES: readonly Point2[] = [
  [-HALF, HALF],
  [HALF, HALF],
  [HALF, -HALF],
  [-HALF, -HALF],
];

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
