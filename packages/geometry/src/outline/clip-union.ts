// Unions of rings on a grid by the library polygon-clipping, in several ways: it fails on some inputs one way and not
// another. Coordinates are whole numbers; a failure is no exception but undefined.

import polygonClipping from 'polygon-clipping';

type GridPoint = [x: number, y: number];
export type GridRing = GridPoint[];

/** Parts, each an outer ring and its holes; the first point of a ring comes again as its last. */
export type ClippedUnion = GridRing[][];

/** The ways to unite rings, in the order in which they are to be tried; one that fails gives undefined. */
export const WAYS_TO_UNITE: readonly ((rings: readonly GridRing[]) => ClippedUnion | undefined)[] = [
  (rings) => attempt(() => (rings.length > MANY ? byHalves(rings) : atOnce(rings))),
  (rings) => attempt(() => swapped([...(rings.length > MANY ? byHalves : atOnce)(rings.map(swappedRing))])),
  (rings) => attempt(() => byHalves(rings)),
  (rings) => attempt(() => swapped(byHalves(rings.map(swappedRing)))),
];

/** Past about this many rings, uniting halves is faster than all at once, and fails less. */
const MANY = 50;

function attempt(unite: () => ClippedUnion): ClippedUnion | undefined {
  try {
    return unite();
  } catch {
    // The library throws where it loses its way; the next way is tried.
    return undefined;
  }
}

function atOnce(rings: readonly GridRing[]): ClippedUnion {
  const [first, ...others] = rings.map((ring) => [ring]);
  return first === undefined ? [] : polygonClipping.union(first, ...others);
}

function byHalves(rings: readonly GridRing[]): ClippedUnion {
  if (rings.length <= FEW) return atOnce(rings);
  const middle = Math.floor(rings.length / 2);
  return polygonClipping.union(byHalves(rings.slice(0, middle)), byHalves(rings.slice(middle)));
}

const FEW = 8;

const swapped = (parts: ClippedUnion): ClippedUnion => parts.map((rings) => rings.map(swappedRing));

const swappedRing = (ring: GridRing): GridRing => ring.map(([x, y]): GridPoint => [y, x]);
