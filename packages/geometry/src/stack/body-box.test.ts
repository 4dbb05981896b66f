import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ball, box, cone, cylinder, dome, placed } from '../../../../tests/reference/bodies.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import { supportPoint } from '../solids/body.ts';
import { bodyBox } from './body-box.ts';

describe('the box around a body', () => {
  it('is exact for a tilted disc: r sqrt(1 - a_k^2) to each side', () => {
    const axis: Vec3 = [2 / 7, 3 / 7, 6 / 7];
    const { min, max } = bodyBox([{ kind: 'disc', centre: [1, 2, 3], axis, radiusMm: 7 }]);
    const reach = [Math.sqrt(45), Math.sqrt(40), Math.sqrt(13)];
    for (const [k, at] of [1, 2, 3].entries()) {
      expect(Math.abs((max[k] ?? 0) - at - (reach[k] ?? 0))).toBeLessThanOrEqual(1e-14);
      expect(Math.abs(at - (min[k] ?? 0) - (reach[k] ?? 0))).toBeLessThanOrEqual(1e-14);
    }
  });

  it('of a dome reaches a radius up and nothing down', () => {
    expect(bodyBox(dome(5))).toEqual({ min: [-5, -5, 0], max: [5, 5, 5] });
  });

  const SEED = 73;
  const bodies: readonly Body[] = [box(3, 5, 7), cylinder(3, 5), cone(3, 7), dome(4), ball(3)];
  const angle = fc.double({ min: -4, max: 4, noNaN: true });
  it(`touches the body on all six sides (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.constantFrom(...bodies), angle, angle, (body, rollRad, turnRad) => {
        const turned = placed(body, rollRad, turnRad, [11, 13, 17]);
        const { min, max } = bodyBox(turned);
        for (const k of [0, 1, 2] as const) {
          const along = (sign: number): Vec3 => [k === 0 ? sign : 0, k === 1 ? sign : 0, k === 2 ? sign : 0];
          expect(Math.abs(max[k] - supportPoint(turned, along(1))[k])).toBeLessThanOrEqual(1e-13);
          expect(Math.abs(min[k] - supportPoint(turned, along(-1))[k])).toBeLessThanOrEqual(1e-13);
        }
      }),
      { seed: SEED },
    );
  });
});
