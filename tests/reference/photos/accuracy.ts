// Traced towers held against their truth.

import type { Outline } from '@cairnmark/geometry';
import { CONTACT_MM, unionFacts } from '@cairnmark/geometry';
import type { FittedCamera, Photo, TracedTower, View } from '@cairnmark/photo';
import { fitSolid, readSheet, traceTower } from '@cairnmark/photo';
import type { TapNoise } from './true-taps.ts';
import { tapsOn } from './true-taps.ts';
import type { TruePiece, TrueTower } from './truth.ts';
import { readPhoto, readTower } from './truth.ts';

export interface Views {
  readonly tower: TrueTower;
  readonly top: View & { readonly photo: Photo };
  readonly side: View & { readonly photo: Photo };
}

export interface Traced {
  readonly tower: string;
  readonly seed: number;
  /** Share of the true area. */
  readonly areaOff: number;
  /** mm, one a piece. */
  readonly spotsOffMm: readonly number[];
  /** The same in their own stated deviations. */
  readonly spotsOffSigmas: readonly number[];
  /** mm, one a corner. */
  readonly cornersOffMm: readonly number[];
  readonly heightOffMm: number;
  readonly heightOffSigmas: number;
  readonly snapped: readonly boolean[];
}

/** Both photos with their cameras, which come from the pixels alone. */
export function viewsOf(name: string): Views {
  const tower = readTower(name);
  const view = (which: 'top' | 'side'): View & { readonly photo: Photo } => {
    const photo = readPhoto(name, which);
    return { photo, camera: cameraOf(photo, tower) };
  };
  return { tower, top: view('top'), side: view('side') };
}

/** None of the photos says its focal length. */
function cameraOf(photo: Photo, { name, paper }: TrueTower): FittedCamera {
  const read = readSheet(photo, { kind: 'ground', paper, pages: 1, printScale: 1 }, { focal35Mm: null });
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.issues)}`);
  return read.value;
}

export function traced(views: Views, noise: TapNoise): Traced {
  const result = traceTower(views.top, views.side, tapsOn(views.tower, noise));
  if (!result.ok) throw new Error(`${views.tower.name}, seed ${noise.seed}: ${JSON.stringify(result.issues)}`);
  return compared(views.tower, noise.seed, result.value);
}

/** The same; null where the tracing refuses the taps. */
export function tried(views: Views, noise: TapNoise): Traced | null {
  const result = traceTower(views.top, views.side, tapsOn(views.tower, noise));
  return result.ok ? compared(views.tower, noise.seed, result.value) : null;
}

/**
 * mm by which every piece is off, set at its true height: with the edges of the photo, and by its taps alone. By taps alone a height
 * may come out wrong, and nothing could be compared.
 */
export function setTwice({ tower, top }: Views, noise: TapNoise): readonly (readonly [edges: number, taps: number])[] {
  return tapsOn(tower, noise).pieces.map((piece, k) => {
    const { x, y, z } = tower.pieces[k]!;
    const off = (photo: Photo | null): number => {
      const fit = fitSolid(photo, top.camera, { ...piece, bottomMm: z, bottomSigmaMm: 0 }, piece.taps);
      if (!fit.ok) throw new Error(`${tower.name}, seed ${noise.seed}: ${JSON.stringify(fit.issues)}`);
      return Math.hypot(fit.value.pose.xMm - x, fit.value.pose.yMm - y);
    };
    return [off(top.photo), off(null)];
  });
}

function compared(tower: TrueTower, seed: number, { pieces, height }: TracedTower): Traced {
  const spotsOffMm = pieces.map(({ laid }, k) => {
    const { x, y } = tower.pieces[k]!;
    return Math.hypot(laid.xMm - x, laid.yMm - y);
  });
  const area = unionFacts(
    pieces.map(({ placed }) => placed.outline),
    AS_TOUCHED,
  ).areaMm2;
  return {
    tower: tower.name,
    seed,
    areaOff: area / unionFacts(tower.pieces.map(trueOutline), AS_TOUCHED).areaMm2 - 1,
    spotsOffMm,
    spotsOffSigmas: spotsOffMm.map((off, k) => off / Math.sqrt(pieces[k]!.spotVarianceMm2)),
    cornersOffMm: pieces.flatMap(({ placed }, k) => cornersOff(placed.outline, tower.pieces[k]!)),
    heightOffMm: (height?.heightMm ?? Number.NaN) - tower.heightMm,
    heightOffSigmas: ((height?.heightMm ?? Number.NaN) - tower.heightMm) / (height?.sigmaMm ?? 1),
    snapped: pieces.map(({ fit }) => fit.snapped),
  };
}

const AS_TOUCHED = { contactMm: CONTACT_MM, gapAllowanceMm: 0 };

function trueOutline({ outline, circle }: TruePiece): Outline {
  if (circle !== undefined) return { kind: 'disc', centre: [circle.x, circle.y], radiusMm: circle.r };
  return { kind: 'polygon', points: outline!.map(([x, y]) => [x, y] as const) };
}

/** mm. Every true corner to the nearest traced one. */
function cornersOff(traced: Outline, { outline }: TruePiece): readonly number[] {
  if (outline === undefined || traced.kind !== 'polygon') return [];
  return outline.map(([x, y]) => Math.min(...traced.points.map((point) => Math.hypot(point[0] - x, point[1] - y))));
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.map(Math.abs).sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}
