// A paper ball from gores, for a teacher who wants one: strips from pole to pole, each bent one way only. It takes long to
// cut and is no true ball: along the seams it stands out. mm.
// The strips lie on cylinders about level axes that touch the ball along the middle of a strip. Two neighbours meet where
// the strip is 2 r tan(180 / n degrees) cos(latitude) wide, so the seams close exactly; level cuts are regular polygons.

import type { Vec2 } from '@cairnmark/geometry';
import type { Path, PathStep } from './path/path.ts';

export interface Gores {
  /** One strip, upright, its middle at the origin; `count` of them make the ball. */
  readonly gore: Path;
  readonly count: number;
  /** From pole to pole, half the way round the ball. */
  readonly lengthMm: number;
  /** At the middle. */
  readonly widthMm: number;
  /** From the axis to a seam at the middle: the ball stands out there by this less its radius. */
  readonly seamRadiusMm: number;
  /** Paper of all strips. */
  readonly paperMm2: number;
}

/** Fewer strips than four are no ball; RangeError also when the radius is no positive length. */
export function makeGores(radiusMm: number, count: number): Gores {
  if (!(Number.isInteger(count) && count >= FEWEST)) throw new RangeError(`a ball has at least ${FEWEST} gores`);
  if (!(radiusMm > 0 && Number.isFinite(radiusMm))) throw new RangeError(`${radiusMm} mm is no radius`);
  const half = Math.PI / count;
  const halfWidthMm = radiusMm * Math.tan(half);
  return {
    gore: goreOutline(radiusMm, halfWidthMm),
    count,
    lengthMm: Math.PI * radiusMm,
    widthMm: 2 * halfWidthMm,
    seamRadiusMm: radiusMm / Math.cos(half),
    paperMm2: 4 * count * radiusMm * halfWidthMm,
  };
}

const FEWEST = 4;
/** Curves a side. Over 15 degrees a cosine is a cubic to 1.3e-5 of its height: below 0.001 mm on any ball. */
const PIECES = 12;

/** Up the right side, which is a cosine, and down the left one. */
function goreOutline(radiusMm: number, halfWidthMm: number): Path {
  const right = alongCosine(radiusMm, halfWidthMm, -Math.PI / 2, Math.PI / 2);
  const left = alongCosine(radiusMm, -halfWidthMm, Math.PI / 2, -Math.PI / 2);
  return { start: [0, (-Math.PI / 2) * radiusMm], steps: [...right, ...left], closed: true };
}

/** Cubics with the cosine's slope at both ends of each piece. */
function alongCosine(radiusMm: number, halfWidthMm: number, from: number, to: number): readonly PathStep[] {
  const step = (to - from) / PIECES;
  const at = (angle: number): Vec2 => [halfWidthMm * Math.cos(angle), radiusMm * angle];
  const third = (angle: number, sign: 1 | -1): Vec2 => {
    const [x, y] = at(angle);
    const reach = (sign * step) / 3;
    return [x - reach * halfWidthMm * Math.sin(angle), y + reach * radiusMm];
  };
  return Array.from({ length: PIECES }, (_, k): PathStep => {
    const [a, b] = [from + k * step, from + (k + 1) * step];
    return { kind: 'curve', c1: third(a, 1), c2: third(b, -1), to: at(b) };
  });
}
