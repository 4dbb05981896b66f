// Heights and contact normals against closed forms. Tolerance 1e-13 of the sizes used (under 100 mm): 1e-11 mm.

import { describe, expect, it } from 'vitest';
import {
  ball,
  box,
  cone,
  cylinder,
  dome,
  flipped,
  moved,
  onSide,
  placed,
  points,
} from '../../../../tests/reference/bodies.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import { dropHeight } from './drop-height.ts';

const TOLERANCE_MM = 1e-11;
/** The nudge of 1e-12 of the size, on curvatures of at least 1 mm. */
const NORMAL_TOLERANCE = 1e-10;

function expectDrop(upper: Body, lower: Body, heightMm: number, normal?: Vec3): void {
  const drop = dropHeight(upper, lower);
  if (drop === null) throw new Error('the shadows do not overlap');
  expect(drop.converged).toBe(true);
  expect(Math.abs(drop.heightMm - heightMm)).toBeLessThanOrEqual(TOLERANCE_MM);
  expect(Math.abs(Math.hypot(...drop.normal) - 1)).toBeLessThanOrEqual(1e-15);
  if (normal === undefined) return;
  const error = Math.hypot(drop.normal[0] - normal[0], drop.normal[1] - normal[1], drop.normal[2] - normal[2]);
  expect(error).toBeLessThanOrEqual(NORMAL_TOLERANCE);
}

const UP: Vec3 = [0, 0, 1];
/** The unit vector from one point towards another. */
function towards(from: Vec3, to: Vec3): Vec3 {
  const way: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const length = Math.hypot(...way);
  return [way[0] / length, way[1] / length, way[2] / length];
}

describe('flat on flat is exact', () => {
  it.each([
    ['box on the middle of a box', box(3, 5, 7), 11],
    ['box off to one side', moved(box(3, 5, 7), 1.7, 2.9), 11],
    ['box turned', placed(box(3, 5, 7), 0, 0.7, [1.7, 2.9, 0]), 11],
    ['box over one corner', moved(box(3, 5, 7), 4.9, -5.9), 11],
    ['box with edges flush with the one below', moved(box(7, 9, 3), 0, 0), 11],
    ['box that starts from above', moved(box(3, 5, 7), 1, 1, 20), -9],
    ['box that starts from below', moved(box(3, 5, 7), 1, 1, -20), 31],
    ['cylinder on a box', moved(cylinder(3, 5), 2, 3), 11],
    ['cone on a box', moved(cone(3, 5), 2, 3), 11],
    ['dome up on a box', moved(dome(3), 2, 3), 11],
  ])('%s', (_, upper, heightMm) => {
    const drop = dropHeight(upper, box(7, 9, 11));
    expect(drop?.heightMm).toBe(heightMm);
    expect(drop?.normal).toEqual(UP);
  });

  it('cylinder on a cylinder, from the middle to the rim', () => {
    for (const d of [0, 1, 3, 7.9]) expect(dropHeight(moved(cylinder(3, 5), d, 0), cylinder(5, 7))?.heightMm).toBe(7);
  });
});

describe('a ball on', () => {
  it.each([0, 0.001, 1, 3, 5, 7.9])('a ball, offset %d', (d) => {
    const up = Math.sqrt(8 ** 2 - d ** 2);
    expectDrop(moved(ball(5), d, 0), ball(3), 3 + up - 5, [d / 8, 0, up / 8]);
  });

  it('a flat top', () => expectDrop(moved(ball(5), 1, 2), box(7, 9, 11), 11, UP));

  it('the edge of a box: the centre is a radius from the edge', () => {
    const up = Math.sqrt(5 ** 2 - 1.5 ** 2);
    expectDrop(moved(ball(5), 5, 1), box(7, 9, 11), 11 + up - 5, towards([3.5, 1, 11], [5, 1, 11 + up]));
  });

  it('the corner of a box: the centre is a radius from the corner', () => {
    const up = Math.sqrt(5 ** 2 - 1.5 ** 2 - 2 ** 2);
    expectDrop(moved(ball(5), 5, 6.5), box(7, 9, 11), 11 + up - 5, towards([3.5, 4.5, 11], [5, 6.5, 11 + up]));
  });

  it('the tip of a cone', () => expectDrop(ball(5), cone(3, 7), 7, UP));

  it('the tip of a cone, off its axis but touching the tip', () => {
    const up = Math.sqrt(5 ** 2 - 1);
    expectDrop(moved(ball(5), 1, 0), cone(3, 7), 7 + up - 5, [0.2, 0, up / 5]);
  });

  it('the slope of a flat cone: the centre is a radius from the slope', () => {
    // Slope z = 3 - 3 x / 9: unit normal (1, 3) / sqrt 10; the ball of radius 1 stands off by 1 along it.
    const [nx, nz] = [1 / Math.sqrt(10), 3 / Math.sqrt(10)];
    const footX = 5 - nx;
    const drop = dropHeight(moved(ball(1), 5, 0), cone(9, 3));
    expectDrop(moved(ball(1), 5, 0), cone(9, 3), 3 - footX / 3 + nz - 1);
    // A line on the difference body that widens along its length: the normal is known to the root of the height's error.
    expect(Math.hypot((drop?.normal[0] ?? 0) - nx, drop?.normal[1] ?? 1)).toBeLessThanOrEqual(2e-7);
  });

  it('a dome: as on the whole ball', () => {
    const up = Math.sqrt(8 ** 2 - 9);
    expectDrop(moved(ball(5), 0, 3), dome(3), up - 5, [0, 3 / 8, up / 8]);
  });

  it('a cylinder on its side', () => {
    const up = Math.sqrt(8 ** 2 - 4);
    expectDrop(moved(ball(5), 2, 1), onSide(placed(cylinder(3, 20), 0, 0, [0, 0, -10]), 3), 3 + up - 5, [
      0.25,
      0,
      up / 8,
    ]);
  });
});

describe('a round piece upside down or on its side', () => {
  const log = (radiusMm: number, lengthMm: number): Body =>
    onSide(placed(cylinder(radiusMm, lengthMm), 0, 0, [0, 0, -lengthMm / 2]), radiusMm);

  it('log on a box', () => expectDrop(moved(log(3, 20), 1, 2), box(7, 9, 11), 11));

  it('log along the edge of a box', () => {
    const up = Math.sqrt(3 ** 2 - 1);
    expectDrop(moved(log(3, 20), 4.5, 0), box(7, 9, 11), 11 + up - 3, towards([3.5, 0, 11], [4.5, 0, 11 + up]));
  });

  it('log lengthwise on a log', () => {
    const up = Math.sqrt(8 ** 2 - 1);
    expectDrop(moved(log(3, 20), 1, 2), log(5, 30), 5 + up - 3, [1 / 8, 0, up / 8]);
  });

  it('log across a log', () => expectDrop(placed(log(3, 20), 0, Math.PI / 2, [2, 1, 0]), log(5, 30), 10, UP));

  it('tip on tip', () => expectDrop(flipped(cone(3, 7), 7), cone(5, 4), 4, UP));

  it('tip on a slope', () => expectDrop(moved(flipped(cone(1, 7), 7), 2, 1), cone(5, 4), 4 - 0.8 * Math.sqrt(5)));

  it('dome down on a ball', () => {
    const up = Math.sqrt(8 ** 2 - 4);
    expectDrop(moved(flipped(dome(5), 5), 2, 0), ball(3), 3 + up - 5, [0.25, 0, up / 8]);
  });

  it('dome down on a box', () => expectDrop(moved(flipped(dome(5), 5), 2, 1), box(7, 9, 11), 11, UP));
});

it('a ball on the tilted flat end of a cylinder: the centre is a radius from the plane of the end', () => {
  const [t, radiusMm, y] = [0.5, 0.7, -2.5];
  const axis: Vec3 = [0, -Math.sin(t), Math.cos(t)];
  const centreMm = (radiusMm + 5 - y * axis[1]) / axis[2];
  expectDrop(moved(ball(radiusMm), 0.3, y), placed(cylinder(3, 5), t, 0, [0, 0, 0]), centreMm - radiusMm, axis);
});

describe('edges and corners of flat-faced pieces', () => {
  const ridge = points([-5, 0, 4], [5, 0, 4], [-5, -3, 0], [5, -3, 0], [-5, 3, 0], [5, 3, 0]);

  it('ridge across a ridge, upside down', () => {
    expectDrop(placed(flipped(ridge, 4), 0, 1, [0.3, 0.2, 0]), ridge, 4, UP);
  });

  it('ridge along a ridge, upside down, beside it: it lies on the slope', () => {
    expectDrop(moved(flipped(ridge, 4), 1, 1.5), ridge, 2, [0, 0.8, 0.6]);
  });

  it('box on a ridge', () => expectDrop(moved(box(3, 5, 7), 1, 1), ridge, 4));

  it('box beside the ridge: its lower edge meets the slope', () => {
    expectDrop(moved(box(3, 2, 7), 0, 2.5), ridge, 2, [0, 0.8, 0.6]);
  });
});

describe('where the pieces are does not matter', () => {
  it('a pair at the end of a hall, 200 m up', () => {
    const drop = dropHeight(moved(ball(5), 9000 + 2, -9000 + 1, 7), moved(ball(3), 9000, -9000, 200_000));
    // Positions there are rounded to 4e-12 in plan and 3e-11 in height.
    expect(Math.abs((drop?.heightMm ?? 0) - (200_000 - 7 + 3 + Math.sqrt(64 - 5) - 5))).toBeLessThanOrEqual(1e-10);
    const error = Math.hypot((drop?.normal[0] ?? 0) - 2 / 8, (drop?.normal[1] ?? 0) - 1 / 8);
    expect(error).toBeLessThanOrEqual(1e-10);
  });

  it('shadows apart: no drop', () => {
    expect(dropHeight(moved(box(3, 5, 7), 6, 0), box(7, 9, 11))).toBeNull();
    expect(dropHeight(moved(ball(5), 8.1, 0), ball(3))).toBeNull();
    expect(dropHeight(moved(cone(3, 7), 5.5, 7), box(7, 9, 11))).toBeNull();
  });
});
