// New pictures in every run, of what the kept photos do not show; drawn by a renderer of our own (render.ts).

import { unionFacts } from '@cairnmark/geometry';
import type { FittedCamera, PagePlace, Photo } from '@cairnmark/photo';
import { pagesOf, readSheet, traceTower } from '@cairnmark/photo';
import { describe, expect, it } from 'vitest';
import { freshSeed, inTurn, share } from '../../tools/share.ts';
import { expectNear } from '../../tools/within.ts';
import { diceOf } from '../dice.ts';
import { quantile } from './accuracy.ts';
import type { Built, FreshScene } from './fresh-scenes.ts';
import { FRESH, tapsOnBuilt, topTaps } from './fresh-scenes.ts';
import { render } from './render.ts';
import { someShot } from './scene.ts';

const SEEDS = share(20, 5);

describe.each(inTurn(Object.keys(FRESH), 3, 'fresh photos'))('%s', (name) => {
  const seed = freshSeed(name);
  it(`traced from two new photos (seed ${seed})`, () => {
    const dice = diceOf(seed);
    const fresh = FRESH[name]!(dice);
    const far = fresh.pages === 4 ? 860 : 560;
    const [above, beside] = [
      someShot(dice, dice.between(16, 28), far, 30),
      someShot(dice, dice.between(66, 76), far, 40),
    ];
    const top = render(fresh.scene, above, seed);
    const topCamera = cameraOf(top, fresh, undefined);
    const side = render(fresh.scene, beside, seed + 1);
    const sideCamera = cameraOf(side, fresh, topCamera.places);
    expectNear(topCamera.focalPx, above.camera.f, { relative: 0.025 }, 'focal length from above');
    expectNear(sideCamera.focalPx, beside.camera.f, { relative: 0.025 }, 'focal length from the side');

    const truth = inFrameOf(topCamera, fresh);
    const trueArea = facts(fresh.built.map(({ placed }) => placed.outline)).areaMm2;
    const [places, areas, heights]: [number[], number[], number[]] = [[], [], []];
    const courtyards: number[] = [];
    for (let k = 1; k <= SEEDS; k += 1) {
      const { between } = diceOf(1000 * k + (seed % 997));
      const off = (): number => 4 * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5);
      const taps = {
        pieces: tapsOnBuilt(fresh.built, above.camera, off),
        top: { pixels: topTaps(fresh.built, beside.camera, off), sigmaPx: 2 },
      };
      const traced = traceTower({ photo: top, camera: topCamera }, { photo: side, camera: sideCamera }, taps);
      if (!traced.ok) throw new Error(`taps ${k}: ${JSON.stringify(traced.issues)}`);
      const { pieces, height } = traced.value;
      const union = facts(pieces.map(({ placed }) => placed.outline));
      places.push(...pieces.map(({ laid }, i) => Math.hypot(laid.xMm - truth[i]![0], laid.yMm - truth[i]![1])));
      areas.push(union.areaMm2 / trueArea - 1);
      heights.push((height?.heightMm ?? Number.NaN) - fresh.heightMm);
      if (fresh.pages === 4) {
        // A gap between two cubes may come out as a narrow courtyard of its own.
        expect(union.holes, `courtyards, taps ${k}`).toBeGreaterThanOrEqual(1);
        courtyards.push(union.courtyardMm2 / 2500 - 1);
        expect(pieces.every(({ placed }) => placed.bottomMm === 0)).toBe(true);
      }
    }
    tell(name, seed, { places, areas: areas.map((area) => 100 * area), heights });
    if (courtyards.length > 0) {
      expect(quantile(courtyards, 0.5), 'courtyard, median').toBeLessThan(0.05);
      // 50 mm square, and the cubes at both ends of it 2 mm off each: the promise of 95 % of the places.
      expect(quantile(courtyards, 1), 'courtyard, most').toBeLessThan(0.17);
    }
    expect(quantile(places, 0.5)).toBeLessThan(1);
    // Of the ten places of an ordinary run one or two may be the outliers that one in twenty may be.
    expect(quantile(places, share(0.9, 0.75))).toBeLessThan(2);
    expectNear(quantile(areas, 1), 0, { absolute: 0.02 }, 'area');
    expectNear(quantile(heights, 1), 0, { absolute: 6 }, 'height');
  });
});

const facts = (outlines: Parameters<typeof unionFacts>[0]) =>
  // A traced fort counts gaps up to 2 mm as closed.
  unionFacts(outlines, { contactMm: 0.05, gapAllowanceMm: 2 });

function cameraOf(photo: Photo, { pages }: FreshScene, places: readonly PagePlace[] | undefined): FittedCamera {
  const sheet = { kind: 'ground', paper: 'a4', pages, printScale: 1 } as const;
  const read = readSheet(photo, places === undefined ? sheet : { ...sheet, places }, { focal35Mm: null });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

/** The true spots in the frame of the fit, which takes one of the pages to lie where it should. */
function inFrameOf(
  { places }: FittedCamera,
  { scene, built, pages }: FreshScene,
): readonly (readonly [number, number])[] {
  const kept = pagesOf('a4', pages).find((nominal) =>
    places.some(
      ({ page, middleMm, turnRad }) =>
        page === nominal.page && turnRad === 0 && middleMm.every((value, k) => value === nominal.middleMm[k]),
    ),
  )!;
  const real = scene.pages.find(({ page }) => page === kept.page)!;
  return built.map(({ laid }: Built) => {
    const [dx, dy] = [laid.xMm - real.middleMm[0], laid.yMm - real.middleMm[1]];
    const [c, s] = [Math.cos(real.turnRad), Math.sin(real.turnRad)];
    return [kept.middleMm[0] + c * dx + s * dy, kept.middleMm[1] - s * dx + c * dy];
  });
}

function tell(
  name: string,
  seed: number,
  off: Readonly<Record<'places' | 'areas' | 'heights', readonly number[]>>,
): void {
  const both = (values: readonly number[], digits: number): string =>
    `${quantile(values, 0.5).toFixed(digits)} / ${quantile(values, 0.95).toFixed(digits)}`;
  process.stdout.write(
    `${name}, seed ${seed}, median / 95 %: places ${both(off.places, 2)} mm, area ${both(off.areas, 2)} %, ` +
      `height ${both(off.heights, 1)} mm\n`,
  );
}
