// The sheet of squared paper on the table: how large it is under a build, and its lines. mm, frame of the table.

import type { Vec3 } from '@cairnmark/geometry';
import { MM_PER_CM, MM_PER_INCH } from '@cairnmark/geometry';
import type { RulerUnit } from './ruler-marks.ts';

/** A rectangle with its sides along x and y. */
export interface Rectangle {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface SheetLine {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly isBold: boolean;
}

/** On the table, counter-clockwise from the front left. */
export const rectangleCorners = ({ minX, minY, maxX, maxY }: Rectangle): readonly Vec3[] => [
  [minX, minY, 0],
  [maxX, minY, 0],
  [maxX, maxY, 0],
  [minX, maxY, 0],
];

/** One square is 1 cm or 1 inch; every so many squares a bold line. */
export const SQUARES: Readonly<Record<RulerUnit, { readonly squareMm: number; readonly boldEvery: number }>> = {
  cm: { squareMm: MM_PER_CM, boldEvery: 5 },
  in: { squareMm: MM_PER_INCH, boldEvery: 4 },
};

/** A sheet of whole squares round the ground of a build, with room to lay pieces beside it. It grows by bold squares. */
export function sheetUnder(ground: Rectangle, unit: RulerUnit): Rectangle {
  const { squareMm, boldEvery } = SQUARES[unit];
  const stepMm = squareMm * boldEvery;
  const roomMm = Math.ceil(ROOM_MM / squareMm) * squareMm;
  const down = (value: number): number => Math.floor(value / stepMm) * stepMm - roomMm;
  const up = (value: number): number => Math.ceil(value / stepMm) * stepMm + roomMm;
  return { minX: down(ground.minX), minY: down(ground.minY), maxX: up(ground.maxX), maxY: up(ground.maxY) };
}

const ROOM_MM = 80;

/** Lines of squares counted from the middle of the table (or, upright, from its ground), thin ones first. */
export function sheetLines({ minX, minY, maxX, maxY }: Rectangle, unit: RulerUnit): readonly SheetLine[] {
  const upright = steps(minX, maxX, unit).map(([x, isBold]): SheetLine => ({ from: [x, minY], to: [x, maxY], isBold }));
  const level = steps(minY, maxY, unit).map(([y, isBold]): SheetLine => ({ from: [minX, y], to: [maxX, y], isBold }));
  return [...upright, ...level].sort((a, b) => Number(a.isBold) - Number(b.isBold));
}

function steps(fromMm: number, toMm: number, unit: RulerUnit): readonly (readonly [atMm: number, isBold: boolean])[] {
  const { squareMm, boldEvery } = SQUARES[unit];
  const [first, last] = [Math.ceil(fromMm / squareMm - SLACK), Math.floor(toMm / squareMm + SLACK)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => {
    const square = first + k;
    return [square * squareMm, square % boldEvery === 0] as const;
  });
}

/** No unit: what rounding leaves of a whole number of squares. */
const SLACK = 1e-6;
