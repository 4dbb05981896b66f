import type { Vec2 } from '@cairnmark/geometry';
import { makeSolid, placePiece } from '@cairnmark/geometry';
import type { FittedCamera } from '@cairnmark/photo';
import { describe, expect, it } from 'vitest';
import type { TracedSpot } from '../../photo/fit-piece.ts';
import {
  handPiece,
  kept,
  nudged,
  otherWay,
  pickedUp,
  takenOff,
  tapsAsked,
  withoutTap,
  withTap,
  withWays,
} from './hand.ts';
import { highestOf, stoodOf } from './heights.ts';
import { kindsLeft } from './kinds-left.ts';
import { looksLike, qualityOf } from './quality.ts';
import { shapeBegun, shapeClosed, shapeKept, shapeSaid, withCorner, withOutline } from './shape.ts';
import { moveBy } from './taps.ts';
import { NOT_BEGUN, onSheet, withFile, withoutPhotos, withShot } from './tracing.ts';

const made = makeSolid({ solid: 'rectangular-prism', sizes: { length: 50, width: 30, height: 70 } });
if (!made.ok) throw new Error('no prism');
const PRISM = made.value;
const SOLIDS = new Map([['prism', PRISM]]);
const BENCH = { solids: SOLIDS, stock: new Map([['prism', 3]]), slackMm: 2 };

function spotAt(xMm: number, yMm: number): TracedSpot {
  const laid = { kind: 'prism', resting: 'base', xMm, yMm, turnRad: 0 };
  const [resting] = PRISM.restings;
  if (resting === undefined) throw new Error('no base');
  const placed = placePiece({ laid, solid: PRISM, resting }, 0, 0);
  return { laid, placed, spotVarianceMm2: 1, spotCovariance: [1, 0, 0, 1] };
}

const inHand = pickedUp('prism', 'base')(NOT_BEGUN);
const tap = (at: Vec2) => withTap(at, 2);

describe('taps', () => {
  it('are taken up to the last, and back again', () => {
    const two = tap([7, 5])(tap([3, 1])(inHand));
    expect(two.hand?.taps).toEqual([
      [3, 1],
      [7, 5],
    ]);
    expect(tap([9, 9])(two)).toBe(two);
    expect(withoutTap(two).hand?.taps).toEqual([[3, 1]]);
  });

  it('an answer about other taps than those that stand says nothing', () => {
    const two = tap([7, 5])(tap([3, 1])(inHand));
    const taps = two.hand?.taps ?? [];
    const answer = { ok: true, value: [spotAt(3, 5), spotAt(-7, 1)] } as const;
    expect(handPiece(withWays(taps, answer)(two))?.laid.xMm).toBe(3);
    expect(handPiece(withWays([...taps], answer)(two))).toBeNull();
    expect(handPiece(otherWay(withWays(taps, answer)(two)))?.laid.xMm).toBe(-7);
  });

  it('a prism asks for two, a cylinder for three', () => {
    const cylinder = makeSolid({ solid: 'cylinder', sizes: { radius: 20, height: 30 } });
    expect(tapsAsked(PRISM, 'base')).toBe(2);
    expect(cylinder.ok && tapsAsked(cylinder.value, 'base')).toBe(3);
    expect(tapsAsked(PRISM, 'no such side')).toBe(0);
  });
});

describe('pieces', () => {
  const two = tap([7, 5])(tap([3, 1])(inHand));
  const fitted = withWays(two.hand?.taps ?? [], { ok: true, value: [spotAt(3, 5)] })(two);

  it('are kept where they were nudged to, and the last is taken off again', () => {
    const after = kept(nudged(spotAt(4, 5))(fitted));
    expect(after.pieces.map(({ laid }) => laid.xMm)).toEqual([4]);
    expect(after.hand).toBeNull();
    expect(takenOff(after).pieces).toEqual([]);
    expect(kept(inHand)).toBe(inHand);
  });

  it('another photo from above, or another sheet, begins anew; the photos alone can go', () => {
    const after = kept(fitted);
    expect(withFile('above', new Blob())(after).pieces).toEqual([]);
    expect(withFile('side', new Blob())(after).pieces).toHaveLength(1);
    expect(onSheet({ what: 'fort', paper: 'a4' })(after).pieces).toEqual([]);
    expect(withoutPhotos(withFile('side', new Blob())(after)).shots).toEqual({ above: null, side: null });
    expect(withoutPhotos(after).pieces).toHaveLength(1);
  });

  it('what becomes of a photo that was put away changes nothing', () => {
    const [first, second] = [new Blob(), new Blob()];
    const before = withFile('side', second)(NOT_BEGUN);
    expect(withShot('side', first, { share: 0.5 })(before)).toBe(before);
    expect(withShot('side', second, { share: 0.5 })(before).shots.side?.share).toBe(0.5);
  });
});

describe('a shape that is not on the list', () => {
  const corners: readonly Vec2[] = [
    [3, 5],
    [70, 5],
    [30, 70],
  ];
  const tapped = corners.reduce((before, corner) => withCorner(corner)(before), shapeBegun(NOT_BEGUN));
  const found = {
    outline: { kind: 'polygon', points: corners },
    areaMm2: 2100,
    areaSigmaMm2: 30,
    perimeterMm: 200,
    perimeterSigmaMm: 3,
    onEdge: [true, true, false],
  } as const;

  it('has no height that nobody measured, and no outline without one', () => {
    expect(tapped.shapeInHand?.planeMm).toBeNull();
    expect(shapeClosed(tapped)).toBe(tapped);
  });

  it('what was found for another height of its edge says nothing', () => {
    const asked = shapeClosed(shapeSaid({ planeMm: 50 })(tapped));
    const taps = asked.shapeInHand?.taps ?? [];
    const emptied = shapeSaid({ planeMm: null })(asked);
    expect(withOutline(taps, 50, { ok: true, value: found })(emptied)).toBe(emptied);
    expect(withOutline(taps, 50, { ok: true, value: found })(asked).shapeInHand?.found).toBe(found);
  });

  it('that is a piece of the kit is not left to be traced again', () => {
    const closed = shapeClosed(shapeSaid({ planeMm: 50, kind: 'prism' })(tapped));
    const after = shapeKept(withOutline(closed.shapeInHand?.taps ?? [], 50, { ok: true, value: found })(closed));
    expect(kindsLeft(NOT_BEGUN, BENCH).get('prism')).toBe(3);
    expect(kindsLeft(after, BENCH).get('prism')).toBe(2);
    const all = { ...after, shapes: Array.from({ length: 7 }, () => after.shapes[0]!) };
    expect(kindsLeft(all, BENCH).get('prism')).toBe(0);
  });
});

describe('the traced stack', () => {
  it('what was traced a millimetre into its neighbour stands beside it', () => {
    const stood = stoodOf([spotAt(0, 0), spotAt(49, 0)], BENCH);
    expect(stood.map(({ piece }) => piece.bottomMm)).toEqual([0, 0]);
  });

  it('what was traced on top stands on it, and is highest unless somebody says otherwise', () => {
    const stood = stoodOf([spotAt(0, 0), spotAt(3, 5)], BENCH);
    expect(stood.map(({ holders }) => holders)).toEqual([[], [0]]);
    expect(highestOf(stood, [], null).map(({ number }) => number)).toEqual([1]);
    expect(highestOf(stood, [], 0)[0]?.stackedMm).toBe(70);
    expect(highestOf([], [], null)).toEqual([]);
  });
});

it('arrows move the cross by a step, with Shift by a pixel, and never off what is shown', () => {
  const region = { x: 100, y: 50, width: 300, height: 200 };
  const step = (moveBy([200, 100], 'ArrowRight', false, region)?.[0] ?? 0) - 200;
  expect(step).toBeGreaterThan(5);
  expect(moveBy([200, 100], 'ArrowUp', true, region)).toEqual([200, 99]);
  expect(moveBy([101, 100], 'ArrowLeft', false, region)).toEqual([100, 100]);
  expect(moveBy([200, 249.5], 'ArrowDown', false, region)).toEqual([200, 250]);
  expect(moveBy([200, 100], 'a', false, region)).toBeNull();
});

describe('how good a photo is', () => {
  const camera = (tiltDegrees: number, markers: number, focalSigmaShare: number): FittedCamera => ({
    widthPx: 1632,
    heightPx: 1224,
    focalPx: 1200,
    k1: 0,
    rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1],
    shiftMm: [0, 0, 500],
    bloomPx: 0,
    covariance: new Float64Array(64),
    rmsPx: 0.1,
    focalSigmaShare,
    tiltRad: (tiltDegrees * Math.PI) / 180,
    places: [],
    markers: Array.from({ length: markers }, (_, k) => k),
    strays: [],
  });

  it.each([
    ['above', 20, 8, 0.005, 'good'],
    ['above', 3, 8, 0.005, 'fair'],
    ['above', 41, 8, 0.005, 'fair'],
    ['above', 20, 3, 0.005, 'fair'],
    ['above', 20, 8, 0.04, 'fair'],
    ['side', 75, 5, 0.01, 'good'],
    ['side', 45, 8, 0.01, 'fair'],
  ] as const)('from %s at %d degrees, %d squares, focal length to %d: %s', (view, tilt, markers, sigma, word) => {
    expect(qualityOf(view, camera(tilt, markers, sigma), 8)).toBe(word);
  });

  it('tells the one from above and the one from the side apart', () => {
    for (const tilt of [0, 30, 41]) expect(looksLike(camera(tilt, 8, 0.005))).toBe('above');
    for (const tilt of [60, 75, 85]) expect(looksLike(camera(tilt, 8, 0.005))).toBe('side');
  });
});
