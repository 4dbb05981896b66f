// What tabs weigh and where. mm.

import type { SolidSpec, Vec2, Vec3 } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { solidOf } from '../../../tests/reference/solid-cases.ts';
import { expectNear, expectPointNear } from '../../../tests/tools/within.ts';
import { makeNet } from './make-net.ts';
import type { NetTab } from './net.ts';
import { tabsOf } from './tabs-of.ts';

const TABS = { tabDepthMm: 8 };

describe('the mass of tabs', () => {
  // By hand. Between two sides of a square pyramid lies one tab of each of the four slanting edges.
  test('square pyramid: four tabs all round, so they balance on the axis, above the shell', () => {
    const spec: SolidSpec = { solid: 'rectangular-pyramid', sizes: { length: 50, width: 50, height: 60 } };
    const { centroid, areaMm2 } = massOf(spec);
    expectPointNear(centroid.slice(0, 2), [0, 0], 1e-9);
    const [, , shellMm] = solidOf(spec).centroids.closedShell;
    expect(centroid[2]).toBeGreaterThan(shellMm);
    // An earlier trial: tabs raise it from 14.4 mm to 16.2 mm, and weigh 12 to 22 percent of a net.
    const surfaceMm2 = solidOf(spec).surfaceMm2;
    const raisedMm = (surfaceMm2 * shellMm + areaMm2 * centroid[2]) / (surfaceMm2 + areaMm2);
    expectNear(raisedMm, 16.2, { absolute: 0.8 });
    expectNear(areaMm2 / surfaceMm2, 0.17, { absolute: 0.06 });
  });

  test('cone and cylinder: the teeth of a rim balance in its middle, only the seam pulls aside', () => {
    for (const spec of [
      { solid: 'cylinder', sizes: { radius: 25, height: 80 } },
      { solid: 'cone', sizes: { radius: 30, height: 40 } },
      { solid: 'cone-frustum', sizes: { radius: 50, topRadius: 30, height: 70 } },
    ] as const) {
      const teeth = tabsIn(spec).filter(({ kind }) => kind === 'tooth');
      const rims = new Map(teeth.map(({ centroid }) => [centroid[2], [0, 0]]));
      for (const { centroid, areaMm2 } of teeth) {
        const sum = rims.get(centroid[2])!;
        rims.set(centroid[2], [sum[0]! + centroid[0] * areaMm2, sum[1]! + centroid[1] * areaMm2]);
      }
      expect([...rims.keys()].sort()).toEqual(spec.solid === 'cone' ? [0] : [0, spec.sizes.height]);
      for (const sum of rims.values()) expectPointNear(sum, [0, 0], 1e-9, spec.solid);
    }
  });

  // A second method: the landing cut into a fine grid, each point rolled up by hand.
  test('the seam of a cylinder lies on the wall inside, at the back', () => {
    const seam = tabsIn({ solid: 'cylinder', sizes: { radius: 25, height: 80 } }).find(({ kind }) => kind === 'flap')!;
    const rolled = balanced(seam.landing, ([x, y]) => [25 * Math.sin(x / 25), 25 * Math.cos(x / 25), y]);
    expectPointNear(seam.centroid, rolled, 0.001);
    expect(seam.centroid[1]).toBeGreaterThan(23);
  });

  test('the seam of a cone lies on the wall inside, at the back', () => {
    const seam = tabsIn({ solid: 'cone', sizes: { radius: 30, height: 40 } }).find(({ kind }) => kind === 'flap')!;
    const rolled = balanced(seam.landing, ([x, y]) => {
      const [along, share] = [Math.hypot(x, y), Math.atan2(x, -y) / ((216 / 180) * Math.PI)];
      // The front is the middle of the sheet; to its right, seen from inside, azimuths fall.
      const azimuth = -Math.PI / 2 - share * 2 * Math.PI;
      return [0.6 * along * Math.cos(azimuth), 0.6 * along * Math.sin(azimuth), 40 - 0.8 * along];
    });
    expectPointNear(seam.centroid, rolled, 0.005);
    expect(seam.centroid[1]).toBeGreaterThan(5);
  });

  test('a ball has no tabs', () => {
    expect(tabsOf(solidOf({ solid: 'sphere', sizes: { radius: 20 } }), TABS)).toMatchObject({
      ok: false,
      issues: [{ code: 'no-net' }],
    });
  });
});

function massOf(spec: SolidSpec): { readonly areaMm2: number; readonly centroid: Vec3 } {
  const mass = tabsOf(solidOf(spec), TABS);
  if (!mass.ok) throw new Error('no tabs');
  return mass.value;
}

function tabsIn(spec: SolidSpec): readonly NetTab[] {
  const net = makeNet(solidOf(spec), TABS);
  if (!net.ok) throw new Error('no net');
  return net.value.parts.flatMap(({ tabs }) => tabs);
}

/** Where a flat trapezoid balances when it is rolled up: the mean over the middles of 120 times 120 cells, by their area. */
function balanced([a, farA, farB, b]: readonly Vec2[], roll: (point: Vec2) => Vec3): Vec3 {
  const cells = 120;
  let [area, sum]: [number, number[]] = [0, [0, 0, 0]];
  const mix = (p: Vec2, q: Vec2, t: number): Vec2 => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
  for (let i = 0; i < cells; i += 1) {
    for (let j = 0; j < cells; j += 1) {
      const t = (j + 0.5) / cells;
      const [left, right] = [mix(a!, farA!, t), mix(b!, farB!, t)];
      const width = Math.hypot(right[0] - left[0], right[1] - left[1]);
      const point = roll(mix(left, right, (i + 0.5) / cells));
      area += width;
      sum = sum.map((value, k) => value + width * point[k]!);
    }
  }
  return [sum[0]! / area, sum[1]! / area, sum[2]! / area];
}
