// A tower of tests/corpus/photos: what stands on the sheet, and where people would tap. What of the truth needs the camera is worked
// out here; the tower that comes back has none, so nothing that measures can look at it.

import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Photo } from '@cairnmark/photo';
import jpeg from 'jpeg-js';
import type { Point2, Point3, TrueCamera } from './camera-of-truth.ts';
import { lensOf, project, trueTilt } from './camera-of-truth.ts';
import { hidden } from './hidden.ts';

export interface TruePiece {
  readonly kind: string;
  readonly dims: Readonly<Record<string, number>>;
  readonly x: number;
  readonly y: number;
  readonly turnRad: number;
  readonly z: number;
  readonly outline?: readonly Point3[];
  readonly outlineInTop?: readonly Point2[];
  readonly circle?: { readonly x: number; readonly y: number; readonly r: number; readonly z: number };
  readonly topInSide: Point2;
}

export interface TrueTower {
  readonly name: string;
  readonly paper: 'a4' | 'letter';
  readonly heightMm: number;
  readonly pieces: readonly TruePiece[];
  /** By piece: pixels of the photo from above where its corners, or places round its rim, show. What is hidden is left out. */
  readonly tappable: readonly (readonly Point2[])[];
  /** Where the top of the tower, as people see it, shows in the photo of the side. */
  readonly topTap: Point2;
  /** Figures to hold results against, per photo: focal length, px, and rad off straight down. */
  readonly lens: Readonly<Record<'top' | 'side', { readonly focalPx: number; readonly tiltRad: number }>>;
}

interface TruthFile {
  readonly paper: 'a4' | 'letter';
  readonly heightMm: number;
  readonly pieces: readonly TruePiece[];
  readonly shots: Readonly<Record<'top' | 'side', { readonly file: string; readonly camera: TrueCamera }>>;
}

export const TOWERS: readonly string[] = Array.from({ length: 12 }, (_, k) => `20261-${String(k).padStart(2, '0')}`);

/** Below the root of the repository, where every script of it runs. */
const FOLDER = resolve('tests/corpus/photos');

export function readPhoto(name: string, view: 'top' | 'side'): Photo {
  const { width, height, data } = jpeg.decode(readFileSync(join(FOLDER, `${name}-${view}.jpg`)), { useTArray: true });
  return { width, height, data: new Uint8ClampedArray(data) };
}

export function readTower(name: string): TrueTower {
  const { paper, heightMm, pieces, shots }: TruthFile = JSON.parse(readFileSync(join(FOLDER, `${name}.json`), 'utf8'));
  const [top, side] = [shots.top.camera, shots.side.camera];
  const tappable = pieces.map((piece, k) => {
    const others = pieces.filter((_, other) => other !== k);
    return rimOf(piece, lensOf(top))
      .filter((point) => !hidden(point, lensOf(top), others))
      .map((point) => project(top, point));
  });
  const highest = pieces.reduce((a, b) => (topOf(b) > topOf(a) ? b : a));
  const lens = {
    top: { focalPx: top.f, tiltRad: trueTilt(top) },
    side: { focalPx: side.f, tiltRad: trueTilt(side) },
  };
  return { name, paper, heightMm, pieces, tappable, topTap: topTapOf(highest, side), lens };
}

const topOf = ({ z, dims }: TruePiece): number => z + (dims['height'] ?? 2 * dims['radius']!);

/** Corners; of a round piece 72 places round its rim, of a ball where lines of sight touch it. */
function rimOf(piece: TruePiece, lens: Point3): readonly Point3[] {
  if (piece.outline !== undefined) return piece.outline;
  const { x, y, r, z } = piece.circle!;
  if (piece.kind === 'sphere') return touchingCircle([x, y, z], r, lens);
  return Array.from({ length: 72 }, (_, k) => {
    const turn = (k * Math.PI) / 36;
    return [x + r * Math.cos(turn), y + r * Math.sin(turn), z];
  });
}

/** On a ball the truth names its highest point; people tap where it ends against what is behind it. */
function topTapOf(piece: TruePiece, side: TrueCamera): Point2 {
  if (piece.kind !== 'sphere') return piece.topInSide;
  const { x, y, r, z } = piece.circle!;
  const shown = touchingCircle([x, y, z], r, lensOf(side)).map((point) => project(side, point));
  return shown.reduce((a, b) => (b[1] < a[1] ? b : a));
}

/** Where lines of sight touch a ball: a circle square to the way to the lens. */
function touchingCircle(centre: Point3, r: number, lens: Point3): readonly Point3[] {
  const way = lens.map((value, k) => value - centre[k]!);
  const distance = Math.hypot(...way);
  const [a, b, c] = way.map((value) => value / distance);
  const flat = Math.hypot(a!, b!);
  const u = [-b! / flat, a! / flat, 0];
  const v = [-c! * u[1]!, c! * u[0]!, a! * u[1]! - b! * u[0]!];
  const [out, about] = [(r * r) / distance, r * Math.sqrt(1 - (r / distance) ** 2)];
  return Array.from({ length: 72 }, (_, k) => {
    const turn = (k * Math.PI) / 36;
    const at = (axis: number): number =>
      centre[axis]! + (out * way[axis]!) / distance + about * (Math.cos(turn) * u[axis]! + Math.sin(turn) * v[axis]!);
    return [at(0), at(1), at(2)];
  });
}
