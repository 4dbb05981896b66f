// The centre of an area on the sheet, mm.

import type { Vec2 } from '@cairnmark/geometry';
import { add2, cross2, scale2, sub2 } from '@cairnmark/geometry';

/** The centre of the area inside a ring: triangles fan out from its first corner. */
export function centroidOf(ring: readonly Vec2[]): Vec2 {
  const [first = [0, 0]] = ring;
  const spokes = ring.slice(1).map((corner) => sub2(corner, first));
  let [twiceMm2, moment]: [number, Vec2] = [0, [0, 0]];
  spokes.slice(1).forEach((spoke, k) => {
    const before = spokes[k] ?? spoke;
    const cross = cross2(before, spoke);
    twiceMm2 += cross;
    moment = add2(moment, scale2(add2(before, spoke), cross / 3));
  });
  return add2(first, scale2(moment, 1 / twiceMm2));
}
