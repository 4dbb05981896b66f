// Builds drawn by lot from a kit of lopsided pieces, for laws that any build must keep. Lengths mm, turns rad.

import type { LaidPiece, SolidSpec } from '@cairnmark/geometry';
import fc from 'fast-check';
import { kit, put } from './measured-builds.ts';

/** Sizes are multiples of 10: on a grid of 10 mm, boxes touch or are clear of each other by 5. */
export const DRAWN_SPECS: Readonly<Record<string, SolidSpec>> = {
  slab: { solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 20 } },
  bar: { solid: 'rectangular-prism', sizes: { length: 90, width: 20, height: 30 } },
  cube: { solid: 'cube', sizes: { edge: 40 } },
  stump: { solid: 'rectangular-frustum', sizes: { length: 60, width: 40, topLength: 30, height: 30 } },
  tent: { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } },
  drum: { solid: 'cylinder', sizes: { radius: 20, height: 50 } },
  tip: { solid: 'cone', sizes: { radius: 15, height: 40 } },
  ball: { solid: 'sphere', sizes: { radius: 25 } },
};
export const DRAWN_KINDS = kit(DRAWN_SPECS);
const RESTINGS: Readonly<Record<string, readonly string[]>> = {
  slab: ['base', 'long-side', 'short-side'],
  bar: ['base', 'long-side', 'short-side'],
  cube: ['base'],
  stump: ['base', 'top'],
  tent: ['base'],
  drum: ['base', 'side'],
  tip: ['base'],
  ball: ['round'],
};

const pieceOf = (kind: string): fc.Arbitrary<LaidPiece> =>
  fc
    .record({
      resting: fc.constantFrom(...(RESTINGS[kind] ?? [])),
      x: fc.integer({ min: -8, max: 8 }),
      y: fc.integer({ min: -8, max: 8 }),
      quarter: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ resting, x, y, quarter }) => put(kind, 10 * x, 10 * y, resting, (quarter * Math.PI) / 2));

/** One piece, by quarter turns. */
export const drawnPiece = fc.constantFrom(...Object.keys(DRAWN_SPECS)).chain(pieceOf);
/** Up to nine pieces, on and beside each other. */
export const drawnBuild = fc.array(drawnPiece, { minLength: 1, maxLength: 9 });

/** The build turned about the origin and moved, as a whole. */
export const shifted = (pieces: readonly LaidPiece[], turn: number, dx: number, dy: number): readonly LaidPiece[] => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return pieces.map((one) => ({
    ...one,
    xMm: c * one.xMm - s * one.yMm + dx,
    yMm: s * one.xMm + c * one.yMm + dy,
    turnRad: one.turnRad + turn,
  }));
};
