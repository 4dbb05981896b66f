// Free outlines from exact and from noisy taps. Setting sides on edges is tested on photos (tests/reference/photos).

import type { Vec2 } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { fittedAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { traceOutline } from './trace-outline.ts';

const { truth, camera } = fittedAt(26, 0.04);
const PLANE = { zMm: 60, sigmaMm: 0.5 };

/** An L of 60 by 60 less 30 by 30: 2 700 mm2, 240 mm round. */
const L: readonly Vec2[] = [
  [0, 0],
  [60, 0],
  [60, 30],
  [30, 30],
  [30, 60],
  [0, 60],
];
const tapsOn = (ring: readonly Vec2[], off = (): number => 0): readonly Vec2[] =>
  ring.map(([x, y]) => {
    const [u, v] = project(truth, [x - 20, y - 30, PLANE.zMm]);
    return [u + off(), v + off()];
  });

const traced = (pixels: readonly Vec2[]) => {
  const shape = traceOutline(null, camera, PLANE, { pixels, sigmaPx: 2 });
  if (!shape.ok) throw new Error(JSON.stringify(shape.issues));
  return shape.value;
};

it('exact taps give area and perimeter, tapped either way round', () => {
  for (const ring of [L, [...L].reverse()]) {
    const shape = traced(tapsOn(ring));
    expectNear(shape.areaMm2, 2700, { relative: 1e-3 });
    expectNear(shape.perimeterMm, 240, { relative: 5e-4 });
    expect(shape.onEdge).toEqual([false, false, false, false, false, false]);
  }
});

it('a corner that was tapped twice, and the first one tapped again to close the ring, are one corner each', () => {
  const taps = tapsOn(L);
  const [[u, v] = [0, 0], [p, q] = [0, 0]] = taps;
  const doubled = traced([[u, v], [p, q], [p + 1, q - 2], ...taps.slice(2), [u + 3, v + 1]]);
  expect(doubled).toEqual(traced(taps));
  const folded = traceOutline(null, camera, PLANE, {
    pixels: [
      [u, v],
      [u, v],
      [p, q],
    ],
    sigmaPx: 2,
  });
  expect(folded.ok ? null : folded.issues[0]?.code).toBe('taps-too-few');
});

it('states its uncertainty: over 200 seeds errors are as large as stated', () => {
  let [area, perimeter] = [0, 0];
  for (let seed = 1; seed <= 200; seed += 1) {
    const { between } = diceOf(1000 * seed + 5);
    const shape = traced(tapsOn(L, () => 4 * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5)));
    area += ((shape.areaMm2 - 2700) / shape.areaSigmaMm2) ** 2 / 200;
    perimeter += ((shape.perimeterMm - 240) / shape.perimeterSigmaMm) ** 2 / 200;
  }
  // A chi square of 200 over 200 scatters by a tenth; the height of the plane and the camera are right here, so it is a little less.
  for (const meanSquare of [area, perimeter]) {
    expect(meanSquare).toBeGreaterThan(0.6);
    expect(meanSquare).toBeLessThan(1.4);
  }
});

describe('refused', () => {
  const codeOf = (pixels: readonly Vec2[]): string => {
    const shape = traceOutline(null, camera, PLANE, { pixels, sigmaPx: 2 });
    return shape.ok ? 'ok' : shape.issues[0]!.code;
  };
  it('two taps, and sides that cross', () => {
    expect(codeOf(tapsOn(L.slice(0, 2)))).toBe('taps-too-few');
    expect(
      codeOf(
        tapsOn([
          [0, 0],
          [60, 60],
          [60, 0],
          [0, 60],
        ]),
      ),
    ).toBe('outline-crosses-itself');
  });
});
