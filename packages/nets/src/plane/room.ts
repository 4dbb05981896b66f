// The largest circle in a convex figure: where a label has most room. mm.
// Method: the circle touches three sides; of all threes, those whose circle crosses no other side. A figure with two
// parallel sides has room for several such circles, and the one in the middle of them is taken.

import type { Vec2 } from '@cairnmark/geometry';
import { add2, scale2 } from '@cairnmark/geometry';
import { leftOf, sidesOf } from './convex.ts';

export interface Room {
  readonly centre: Vec2;
  readonly radiusMm: number;
}

/** The largest circle in `ring`, which is convex, counter-clockwise and has at least three corners. */
export function roomIn(ring: readonly Vec2[]): Room {
  const sides = sidesOf(ring);
  const lines = sides.map(([from, to]) => lineAlong(from, to));
  const rooms: Room[] = [];
  lines.forEach((a, i) => {
    lines.slice(i + 1).forEach((b, j) => {
      for (const c of lines.slice(i + j + 2)) {
        const room = touching(a, b, c);
        if (room !== null && sides.every(([p, q]) => leftOf(p, q, room.centre) >= room.radiusMm * (1 - ROUNDING))) {
          rooms.push(room);
        }
      }
    });
  });
  const radiusMm = Math.max(...rooms.map((room) => room.radiusMm));
  const best = rooms.filter((room) => room.radiusMm >= radiusMm * (1 - ROUNDING));
  return { centre: scale2(best.map(({ centre }) => centre).reduce(add2, [0, 0]), 1 / best.length), radiusMm };
}

/** No unit (relative). Three lines give their circle far better than this. */
const ROUNDING = 1e-9;

/** A point p lies x nx + y ny - d to the left of the line. */
interface Line {
  readonly nx: number;
  readonly ny: number;
  readonly d: number;
}

function lineAlong(from: Vec2, to: Vec2): Line {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [nx, ny] = [(from[1] - to[1]) / length, (to[0] - from[0]) / length];
  return { nx, ny, d: nx * from[0] + ny * from[1] };
}

/** The circle to the left of three lines that touches all of them: three linear equations, by Cramer's rule. */
function touching(a: Line, b: Line, c: Line): Room | null {
  const [bx, by, bd] = [b.nx - a.nx, b.ny - a.ny, b.d - a.d];
  const [cx, cy, cd] = [c.nx - a.nx, c.ny - a.ny, c.d - a.d];
  const det = bx * cy - by * cx;
  if (Math.abs(det) < ROUNDING) return null;
  const centre: Vec2 = [(bd * cy - by * cd) / det, (bx * cd - bd * cx) / det];
  const radiusMm = a.nx * centre[0] + a.ny * centre[1] - a.d;
  return radiusMm > 0 ? { centre, radiusMm } : null;
}
