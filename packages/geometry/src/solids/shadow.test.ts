import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beltArea,
  ellipsePerimeter,
  squashedBeltArea,
  squashedBeltPerimeter,
} from '../../../../tests/reference/plan-figures.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Outline } from '../kernel/outline.ts';
import { ROUND_OUTLINE_RELATIVE } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Primitive } from './body.ts';
import { cone } from './cone.ts';
import { coneFrustum } from './cone-frustum.ts';
import { shadow } from './shadow.ts';

const ROUND = { relative: ROUND_OUTLINE_RELATIVE };
const TILTS = [0.1, 0.5, 1, 1.3, 1.5];

/** A unit vector that leans by `tilt` from upright, towards (0.6, 0.8) on the plan. */
const leaning = (tilt: number): Vec3 => [0.6 * Math.sin(tilt), 0.8 * Math.sin(tilt), Math.cos(tilt)];
const disc = (centre: Vec3, axis: Vec3, radiusMm: number): Primitive => ({ kind: 'disc', centre, axis, radiusMm });
const points = (...corners: readonly Vec3[]): Primitive => ({ kind: 'points', points: corners });

describe('discs', () => {
  test('an upright one is a true disc, whichever way its axis points', () => {
    const expected: Outline = { kind: 'disc', centre: [3, 5], radiusMm: 7 };
    expect(shadow([disc([3, 5, 11], [0, 0, 1], 7)])).toEqual(expected);
    expect(shadow([disc([3, 5, 11], [0, 0, -1], 7)])).toEqual(expected);
    expect(shadow([disc([3, 5, 11], [1e-12, 0, 1], 7)])).toEqual(expected);
  });

  test.each(TILTS)('tilted by %d rad it is an ellipse of area pi a b', (tilt) => {
    const outline = shadow([disc([3, 5, 11], leaning(tilt), 7)]);
    const [a, b] = [7, 7 * Math.cos(tilt)];
    expectNear(area(outline), Math.PI * a * b, { relative: 1e-12 }, 'drawn with the area of the curve');
    expectNear(perimeter(outline), ellipsePerimeter(a, b), ROUND);
  });

  test('edge-on, beside a corner, it is a straight side, exactly', () => {
    const outline = shadow([disc([0, 0, 5], [0, 1, 0], 5), points([0, 3, 0])]);
    expect(outline).toEqual({
      kind: 'polygon',
      points: [
        [-5, 0],
        [5, 0],
        [0, 3],
      ],
    });
  });

  test('a large disc hides what stands under it, and no more', () => {
    const large = disc([0, 0, 9], [0, 0, 1], 7);
    const expected: Outline = { kind: 'disc', centre: [0, 0], radiusMm: 7 };
    expect(shadow([disc([0, 0, 0], [0, 0, 1], 3), large])).toEqual(expected);
    expect(shadow([points([7, 0, 0]), large])).toEqual(expected);
    expect(shadow([points([7.001, 0, 0]), large]).kind).toBe('polygon');
    expect(shadow([disc([4.001, 0, 0], [0, 0, 1], 3), large]).kind).toBe('polygon');
  });
});

describe('balls and half balls', () => {
  test('a ball is a true disc; with a corner far off, a belt that ends in a point', () => {
    const ball: Primitive = { kind: 'ball', centre: [3, 5, 7], radiusMm: 7 };
    expect(shadow([ball])).toEqual({ kind: 'disc', centre: [3, 5], radiusMm: 7 });
    const outline = shadow([ball, points([3 + 12, 5 + 16, 0])]);
    expectNear(area(outline), beltArea(7, 0, 20), ROUND);
    expectNear(perimeter(outline), squashedBeltPerimeter(7, 0, 20, 1), ROUND);
  });

  test('a half ball on its flat side or on its dome is a true disc', () => {
    for (const up of [1, -1]) {
      const half: Primitive = { kind: 'half-ball', centre: [3, 5, 7], axis: [0, 0, up], radiusMm: 7 };
      expect(shadow([half])).toEqual({ kind: 'disc', centre: [3, 5], radiusMm: 7 });
    }
  });

  test.each([...TILTS, Math.PI / 2, 2, 3])('a half ball leaning by %d rad: half a disc and half an ellipse', (tilt) => {
    const outline = shadow([{ kind: 'half-ball', centre: [3, 5, 7], axis: leaning(tilt), radiusMm: 7 }]);
    const squash = Math.abs(Math.cos(tilt));
    expectNear(area(outline), (Math.PI / 2) * 49 * (1 + squash), ROUND);
    expectNear(perimeter(outline), 7 * Math.PI + ellipsePerimeter(7, 7 * squash) / 2, ROUND);
    // The dome leans towards (0.6, 0.8): there the shadow reaches a whole radius, and less behind.
    expectNear(reach(outline, 0.6, 0.8) - (3 * 0.6 + 5 * 0.8), 7, ROUND);
    expectNear(reach(outline, -0.6, -0.8) + (3 * 0.6 + 5 * 0.8), 7 * squash, { absolute: 7 * ROUND.relative });
  });
});

describe('round solids', () => {
  test.each(TILTS)('a cylinder leaning by %d rad: an ellipse drawn out', (tilt) => {
    const axis = leaning(tilt);
    const outline = shadow([disc([3, 5, 7], axis, 7), disc([3 + 20 * axis[0], 5 + 20 * axis[1], 7], axis, 7)]);
    const long = 20 * Math.sin(tilt);
    expectNear(area(outline), Math.PI * 49 * Math.cos(tilt) + 2 * 7 * long, ROUND);
    expectNear(perimeter(outline), ellipsePerimeter(7, 7 * Math.cos(tilt)) + 2 * long, ROUND);
  });

  test('a cylinder on its side is a rectangle, exactly', () => {
    const outline = shadow([disc([0, 0, 7], [1, 0, 0], 7), disc([20, 0, 7], [1, 0, 0], 7)]);
    expect(area(outline)).toBe(280);
    expect(perimeter(outline)).toBe(68);
  });

  const length = fc.integer({ min: 1, max: 80_000 }).map((eighths) => eighths / 8);

  test('cones on their side: the hull of an ellipse and a point, seed 35711', () => {
    const check = (radius: number, height: number): void => {
      const made = cone.make({ radius, height });
      if (!made.ok) throw new Error('refused');
      const slant = Math.hypot(radius, height);
      // Its axis leans from upright by the angle at the base: the disc is seen shortened by r / s.
      expectBelt(made.value.restings[1]!.outline, radius, 0, (height * height) / slant, radius / slant);
    };
    check(10_000, 0.1);
    check(0.1, 10_000);
    fc.assert(fc.property(length, length, check), { seed: 35711, numRuns: share(300, 20) });
  });

  test('cone frustums on their side: a belt round two ellipses, seed 35711', () => {
    const check = (radius: number, top: number, height: number): void => {
      if (top >= radius) return;
      const made = coneFrustum.make({ radius, topRadius: top, height });
      if (!made.ok) throw new Error('refused');
      const slant = Math.hypot(radius - top, height);
      expectBelt(made.value.restings[2]!.outline, radius, top, (height * height) / slant, (radius - top) / slant);
    };
    check(10_000, 0.1, 0.1);
    check(0.2, 0.1, 10_000);
    check(10_000, 9_999, 10_000);
    fc.assert(fc.property(length, length, length, check), { seed: 35711, numRuns: share(300, 20) });
  });
});

function expectBelt(outline: Outline, R: number, r: number, d: number, squash: number): void {
  expectNear(area(outline), squashedBeltArea(R, r, d, squash), ROUND, 'area');
  expectNear(perimeter(outline), squashedBeltPerimeter(R, r, d, squash), ROUND, 'perimeter');
}

function corners(outline: Outline): readonly (readonly [number, number])[] {
  if (outline.kind === 'disc') throw new Error('expected a polygon');
  return outline.points;
}

function area(outline: Outline): number {
  const [[ox, oy], ...others] = corners(outline) as [readonly [number, number], ...(readonly [number, number])[]];
  let twice = 0;
  for (const [k, [x, y]] of others.entries()) {
    const [nx, ny] = others[k + 1] ?? [ox, oy];
    twice += (x - ox) * (ny - oy) - (nx - ox) * (y - oy);
  }
  return twice / 2;
}

function perimeter(outline: Outline): number {
  const all = corners(outline);
  return all.reduce((sum, [x, y], k) => {
    const [nx, ny] = all[(k + 1) % all.length]!;
    return sum + Math.hypot(nx - x, ny - y);
  }, 0);
}

const reach = (outline: Outline, x: number, y: number): number =>
  Math.max(...corners(outline).map((corner) => corner[0] * x + corner[1] * y));
