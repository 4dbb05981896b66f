// The smallest upright box around a body, from closed forms of its primitives. Frame of the body; mm.
// A disc with unit axis a reaches r sqrt(1 - a_k^2) along axis k, written with the other two components of a so
// that nothing is lost when the disc lies almost square to that axis.

import type { Box3 } from '../kernel/box.ts';
import { boxAround, boxOfBoth, EMPTY_BOX } from '../kernel/box.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, sub3 } from '../kernel/vec.ts';
import type { Body, Primitive } from '../solids/body.ts';

/** The smallest box, with sides along the axes, that holds the whole body. */
export function bodyBox(body: Body): Box3 {
  return body.reduce((box: Box3, primitive) => boxOfBoth(box, primitiveBox(primitive)), EMPTY_BOX);
}

function primitiveBox(primitive: Primitive): Box3 {
  switch (primitive.kind) {
    case 'points':
      return boxAround(primitive.points);
    case 'ball':
      return boxBeside(primitive.centre, ballReach(primitive.radiusMm), ballReach(primitive.radiusMm));
    case 'disc': {
      const rim = rimReach(primitive.axis, primitive.radiusMm);
      return boxBeside(primitive.centre, rim, rim);
    }
    case 'half-ball': {
      const rim = rimReach(primitive.axis, primitive.radiusMm);
      const { axis, radiusMm } = primitive;
      const above = sideReach(axis, rim, radiusMm);
      const below = sideReach([-axis[0], -axis[1], -axis[2]], rim, radiusMm);
      return boxBeside(primitive.centre, below, above);
    }
  }
}

const boxBeside = (centre: Vec3, below: Vec3, above: Vec3): Box3 => ({
  min: sub3(centre, below),
  max: add3(centre, above),
});

const ballReach = (radiusMm: number): Vec3 => [radiusMm, radiusMm, radiusMm];

const rimReach = (axis: Vec3, radiusMm: number): Vec3 => [
  radiusMm * Math.hypot(axis[1], axis[2]),
  radiusMm * Math.hypot(axis[2], axis[0]),
  radiusMm * Math.hypot(axis[0], axis[1]),
];

/** How far a half ball reaches on the side that `axis` points to: the dome along its own half, else the rim. */
const sideReach = (axis: Vec3, rim: Vec3, radiusMm: number): Vec3 => [
  axis[0] >= 0 ? radiusMm : rim[0],
  axis[1] >= 0 ? radiusMm : rim[1],
  axis[2] >= 0 ? radiusMm : rim[2],
];
