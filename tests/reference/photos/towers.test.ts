// The twelve towers of tests/corpus/photos, traced by taps that are off by 2 px. The truth's camera is taken away before anything is
// measured (see truth.ts), and no photo says its focal length.

import { describe, expect, it } from 'vitest';
import { inTurn, share } from '../../tools/share.ts';
import { expectNear } from '../../tools/within.ts';
import type { Traced, Views } from './accuracy.ts';
import { quantile, setTwice, traced, viewsOf } from './accuracy.ts';
import type { FreeOutline } from './free-outlines.ts';
import { freeOutlines } from './free-outlines.ts';
import { TOWERS } from './truth.ts';

const SEEDS = Array.from({ length: share(20, 3) }, (_, k) => 1000 * (k + 1));
const CHOSEN = inTurn(TOWERS, 6, 'photographed towers');

describe(`${CHOSEN.length} of 12 towers, ${SEEDS.length} seeds each`, () => {
  const all: Traced[] = [];
  const free: FreeOutline[] = [];

  describe.each(CHOSEN)('%s', (name) => {
    const views: { read: Views | null } = { read: null };
    const read = (): Views => {
      views.read ??= viewsOf(name);
      return views.read;
    };

    it('the focal length comes out of the pixels', () => {
      const { tower, top, side } = read();
      // From 15 degrees off straight down.
      expectNear(top.camera.focalPx, tower.lens.top.focalPx, { relative: 0.025 }, 'from above');
      expectNear(side.camera.focalPx, tower.lens.side.focalPx, { relative: 0.025 }, 'from the side');
      expectNear(top.camera.tiltRad, tower.lens.top.tiltRad, { absolute: 0.01 }, 'tilt');
    });

    it('perfect taps: area within 0.5 %, places within 0.5 mm, height within 1 mm', () => {
      const one = traced(read(), { seed: 1, sigmaPx: 0 });
      expectNear(one.areaOff, 0, { absolute: 0.005 }, 'area');
      expectNear(Math.max(...one.spotsOffMm), 0, { absolute: 0.5 }, 'places');
      expectNear(one.heightOffMm, 0, { absolute: 1 }, 'height');
    });

    it('taps that are off: area within 2 %, height within 6 mm', () => {
      for (const seed of SEEDS) {
        const one = traced(read(), { seed: seed + TOWERS.indexOf(name), sigmaPx: 2 });
        expectNear(one.areaOff, 0, { absolute: 0.02 }, `area, seed ${seed}`);
        expectNear(one.heightOffMm, 0, { absolute: 6 }, `height, seed ${seed}`);
        all.push(one);
        free.push(...freeOutlines(read(), { seed: seed + TOWERS.indexOf(name), sigmaPx: 2 }));
      }
    });

    it('edges of the photo make no piece worse than its taps by more than 0.5 mm', () => {
      const given = read();
      for (const seed of SEEDS) {
        const noise = { seed: seed + TOWERS.indexOf(name), sigmaPx: 2 };
        for (const [k, [edges, taps]] of setTwice(given, noise).entries()) {
          expect(edges - taps, `seed ${seed}, piece ${k}`).toBeLessThanOrEqual(0.5);
        }
      }
    });
  });

  it('free outlines: area within 5 %, perimeter within 3 %; edges make none worse by over 0.5 mm, and seldom a corner', () => {
    expect(free.length).toBeGreaterThan(0);
    // 95 % of them, of the few of an ordinary run 80 %: a small outline on a rim like its own is set on that.
    expect(
      quantile(
        free.map(({ areaOff }) => areaOff),
        share(0.95, 0.8),
      ),
    ).toBeLessThan(0.05);
    expect(
      quantile(
        free.map(({ perimeterOff }) => perimeterOff),
        share(0.95, 0.8),
      ),
    ).toBeLessThan(0.03);
    const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
    for (const { corners } of free) {
      const [edges, taps] = [mean(corners.map(([edge]) => edge)), mean(corners.map(([, tap]) => tap))];
      expect(edges - taps, 'in the mean of its corners').toBeLessThanOrEqual(0.5);
    }
    const corners = free.flatMap((one) => one.corners);
    const worse = corners.filter(([edges, tap]) => edges - tap > 0.5);
    expect(worse.length).toBeLessThanOrEqual(share(0.01, 0.1) * corners.length);
  });

  it('places: median 1 mm, 95 % within 2 mm; heights: 95 % within 3 mm', () => {
    const spots = all.flatMap(({ spotsOffMm }) => spotsOffMm);
    const heights = all.map(({ heightOffMm }) => heightOffMm);
    expect(spots.length).toBe(4 * CHOSEN.length * SEEDS.length);
    expect(quantile(spots, 0.5)).toBeLessThan(1);
    // Of the few of an ordinary run, one outlier more may be among them than one in twenty.
    expect(quantile(spots, share(0.95, 0.9))).toBeLessThan(2);
    expect(quantile(heights, share(0.95, 0.8))).toBeLessThan(3);
  });
});
