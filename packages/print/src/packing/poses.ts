// An outline in every turn that is tried, as cells.

import type { Vec2 } from '@cairnmark/geometry';
import { placeOn } from '@cairnmark/nets';
import { CELL_MM, CELL_SLACK, TURNS } from './grid.ts';
import type { Raster } from './raster.ts';
import { rasterOf } from './raster.ts';
import type { Space } from './types.ts';

/** An outline turned about its origin, then moved so that its lowest x and y are 0. */
export interface Pose extends Raster {
  readonly turnRad: number;
  readonly movedMm: Vec2;
  readonly widthMm: number;
  readonly heightMm: number;
  /** How many columns to the right and rows up it can go on the page. */
  readonly mostColumn: number;
  readonly mostRow: number;
  readonly cells: number;
  /** Level or upright: what people prefer. */
  readonly straight: boolean;
}

/** The turns in which the outline fits the space; none where it is too large. */
export function posesOf(outline: readonly Vec2[], space: Space): readonly Pose[] {
  const best = placeOn(outline, space.widthMm, space.heightMm).turnRad;
  const even = Array.from({ length: TURNS }, (_, k) => (k * 2 * Math.PI) / TURNS);
  return [...even, best, best + Math.PI]
    .map((turnRad) => poseOf(outline, turnRad, space))
    .filter(({ mostColumn, mostRow }) => mostColumn >= 0 && mostRow >= 0);
}

function poseOf(outline: readonly Vec2[], turnRad: number, space: Space): Pose {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const turned = outline.map(([x, y]): Vec2 => [cos * x - sin * y, sin * x + cos * y]);
  const [xs, ys] = [turned.map(([x]) => x), turned.map(([, y]) => y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const [widthMm, heightMm] = [Math.max(...xs) - left, Math.max(...ys) - low];
  const ring = turned.map(([x, y]): Vec2 => [x - left, y - low]);
  const raster = rasterOf(ring, widthMm, heightMm);
  return {
    ...raster,
    turnRad,
    movedMm: [-left, -low],
    widthMm,
    heightMm,
    mostColumn: Math.floor((space.widthMm - widthMm) / CELL_MM + CELL_SLACK),
    mostRow: Math.floor((space.heightMm - heightMm) / CELL_MM + CELL_SLACK),
    cells: raster.runs.reduce((sum, { first, last }) => sum + last - first + 1, 0),
    straight: Math.abs(Math.sin(2 * turnRad)) < STRAIGHT_SINE,
  };
}

/** No unit. Quarter turns are straight but for rounding. */
const STRAIGHT_SINE = 1e-9;
