// What the renderer draws: a table, a sheet of one or four pages, and pieces with flat faces, in mm; and the camera that looks at it.

import type { PlacedPiece } from '@cairnmark/geometry';
import type { PagePlace, PaperId } from '@cairnmark/photo';
import type { Dice } from '../dice.ts';
import type { TrueCamera } from './camera-of-truth.ts';

export interface Scene {
  readonly paper: PaperId;
  /** Where its pages really lie; none: the bare table. */
  readonly pages: readonly PagePlace[];
  /** Printed over nominal. */
  readonly printScale: number;
  readonly pieces: readonly { readonly placed: PlacedPiece; readonly colour: Colour }[];
  readonly table: Colour;
}

/** Shares of light, red, green, blue. */
export type Colour = readonly [number, number, number];

export const COLOURS: readonly Colour[] = [
  [0.02, 0.3, 0.07],
  [0.05, 0.16, 0.5],
  [0.5, 0.06, 0.05],
  [0.55, 0.4, 0.03],
  [0.3, 0.07, 0.35],
];

export interface Shot {
  readonly width: number;
  readonly height: number;
  readonly camera: TrueCamera;
  /** px: standard deviation of the blur; and of the noise in steps of brightness. */
  readonly blurPx: number;
  readonly noise: number;
}

/** A camera that looks at the middle of the sheet from `distanceMm`, `tiltRad` off straight down, from the side `headingRad`. */
export function lookingAt(
  { width, height }: Pick<Shot, 'width' | 'height'>,
  view: {
    readonly tiltRad: number;
    readonly headingRad: number;
    readonly rollRad: number;
    readonly distanceMm: number;
    readonly focalPx: number;
    readonly k1: number;
    /** Height above the table that it looks at. */
    readonly zMm: number;
  },
): TrueCamera {
  const { tiltRad, headingRad, rollRad, distanceMm, focalPx, k1, zMm } = view;
  const [ct, st] = [Math.cos(tiltRad), Math.sin(tiltRad)];
  const [ch, sh] = [Math.cos(headingRad), Math.sin(headingRad)];
  const [cr, sr] = [Math.cos(rollRad), Math.sin(rollRad)];
  // Right, down and ahead of an upright camera; then rolled about its axis.
  const right = [ch, sh, 0];
  const down = [sh * ct, -ch * ct, -st];
  const ahead = [-sh * st, ch * st, -ct];
  const R = [
    ...right.map((value, k) => cr * value + sr * down[k]!),
    ...right.map((value, k) => -sr * value + cr * down[k]!),
    ...ahead,
  ];
  const at = [-ahead[0]! * distanceMm, -ahead[1]! * distanceMm, zMm - ahead[2]! * distanceMm];
  const t = [0, 1, 2].map((row) => -[0, 1, 2].reduce((sum, k) => sum + R[3 * row + k]! * at[k]!, 0));
  return { f: focalPx, cx: width / 2, cy: height / 2, k1, R, t };
}

/** A photo as phones take them: 26 mm or so, some distortion, some blur and noise. */
export function someShot({ between }: Dice, tiltDegrees: number, distanceMm: number, zMm: number): Shot {
  const size = { width: 1632, height: 1224 };
  const camera = lookingAt(size, {
    tiltRad: (tiltDegrees * Math.PI) / 180,
    headingRad: between(-0.5, 0.5),
    rollRad: between(-0.1, 0.1),
    distanceMm,
    focalPx: between(1190, 1260),
    k1: between(-0.1, 0.1),
    zMm,
  });
  return { ...size, camera, blurPx: between(0.6, 1.3), noise: between(1, 3) };
}
