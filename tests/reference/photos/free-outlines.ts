// Outlines traced freely, without the list of pieces: every corner of the pieces that show whole is tapped.

import { signedAreaMm2 } from '@cairnmark/geometry';
import type { TracedShape } from '@cairnmark/photo';
import { traceOutline } from '@cairnmark/photo';
import { diceOf } from '../dice.ts';
import type { Views } from './accuracy.ts';
import type { Point2 } from './camera-of-truth.ts';
import type { TapNoise } from './true-taps.ts';

export interface FreeOutline {
  /** Shares of the true ones. */
  readonly areaOff: number;
  readonly perimeterOff: number;
  /** mm by which every corner is off, with the edges of the photo and by its tap alone. */
  readonly corners: readonly (readonly [edges: number, tap: number])[];
}

export function freeOutlines({ tower, top }: Views, { seed, sigmaPx }: TapNoise): readonly FreeOutline[] {
  const { between } = diceOf(seed);
  const off = (): number => 2 * sigmaPx * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5);
  return tower.pieces.flatMap(({ outline }, k) => {
    const shown = tower.tappable[k]!;
    if (outline === undefined || shown.length < outline.length) return [];
    const pixels = shown.map(([u, v]): Point2 => [u + off(), v + off()]);
    const plane = { zMm: outline[0]![2], sigmaMm: 0.5 };
    const traced = [top.photo, null].map((photo): TracedShape => {
      const shape = traceOutline(photo, top.camera, plane, { pixels, sigmaPx });
      if (!shape.ok) throw new Error(`${tower.name}, seed ${seed}: ${JSON.stringify(shape.issues)}`);
      return shape.value;
    });
    const [edges, taps] = traced;
    const ring = outline.map(([x, y]): Point2 => [x, y]);
    const round = ring.reduce((sum, [x, y], j) => {
      const [nextX, nextY] = ring[(j + 1) % ring.length]!;
      return sum + Math.hypot(nextX - x, nextY - y);
    }, 0);
    const nearest = ({ outline: { points } }: TracedShape, [x, y]: Point2): number =>
      Math.min(...points.map((point) => Math.hypot(point[0] - x, point[1] - y)));
    return [
      {
        areaOff: edges!.areaMm2 / Math.abs(signedAreaMm2(ring)) - 1,
        perimeterOff: edges!.perimeterMm / round - 1,
        corners: ring.map((corner) => [nearest(edges!, corner), nearest(taps!, corner)] as const),
      },
    ];
  });
}
