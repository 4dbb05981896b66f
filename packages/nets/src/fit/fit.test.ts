// Nets on pages: whether they fit, the largest that does, and nets in parts. mm.

import type { SolidSpec } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldBackErrorMm } from '../../../../tests/reference/folded-nets.ts';
import { solidOf } from '../../../../tests/reference/solid-cases.ts';
import { share } from '../../../../tests/tools/share.ts';
import { makeNet } from '../make-net.ts';
import type { Net } from '../net.ts';
import { flattenPath } from '../path/measure.ts';
import { turnPath } from '../path/path.ts';
import { placeOn } from '../plane/place-on.ts';
import { checkFit } from './check-fit.ts';
import { fits, netFits } from './fits.ts';
import type { Frame } from './frame.ts';
import { largestThatFits, scaled } from './largest.ts';
import { splitNet } from './split.ts';

/** What is left of the page inside 8 mm of margin, with a foot of 14 mm. */
const A4: Frame = { paper: 'A4', widthMm: 194, heightMm: 267 };
const LETTER: Frame = { paper: 'Letter', widthMm: 199.9, heightMm: 249.4 };
const TABS = { tabDepthMm: 8 };
const SEED = 70717;

describe('a figure on a page', () => {
  // W. B. Carver, American Mathematical Monthly 64 (1957), from memory: a p by q rectangle, p > a, fits an a by b one when
  // q is at most b and b is at least (2pqa + (p^2 - q^2) root(p^2 + q^2 - a^2)) / (p^2 + q^2).
  test(`a rectangle fits a page when the theorem says so (seed ${SEED})`, () => {
    const length = fc.double({ min: 10, max: 400, noNaN: true });
    let [fitting, slanted] = [0, 0];
    fc.assert(
      fc.property(length, length, (long, wide) => {
        const [p, q] = [Math.max(long, wide), Math.min(long, wide)];
        const [a, b] = [267, 194];
        const least = (2 * p * q * a + (p ** 2 - q ** 2) * Math.sqrt(p ** 2 + q ** 2 - a ** 2)) / (p ** 2 + q ** 2);
        const expected = p <= a ? q <= b : q <= b && b >= least;
        if (Math.abs(b - least) < 1e-6) return;
        const scale = placeOn(rectangle(long, wide), 194, 267).scale;
        expect(scale >= 1, `${long} by ${wide}`).toBe(expected);
        if (expected) fitting += 1;
        if (expected && p > a) slanted += 1;
      }),
      { seed: SEED, numRuns: share(2000, 300) },
    );
    expect(fitting).toBeGreaterThan(50);
    expect(slanted).toBeGreaterThan(0);
  });

  test('no turn in steps of a tenth of a degree has more room than the best one', () => {
    const ring = [
      [0, 0],
      [70, 0],
      [110, 30],
      [90, 150],
      [20, 90],
    ] as const;
    const best = placeOn(ring, 194, 267).scale;
    const tried = Array.from({ length: 1800 }, (_, k) => scaleAt(ring, (k * Math.PI) / 1800));
    expect(best).toBeGreaterThanOrEqual(Math.max(...tried) - 1e-12);
    expect(best).toBeLessThan(Math.max(...tried) + 0.01);
  });

  test('turned and moved as told, a part lies inside the page; straight where it fits straight', () => {
    for (const edge of [30, 50, 62]) {
      const [part] = netOf({ solid: 'cube', sizes: { edge } }).parts;
      for (const frame of [A4, LETTER]) {
        const placing = fits(part!, frame);
        if (placing === null) continue;
        const corners = flattenPath(turnPath(part!.cut, placing.turnRad, placing.shift), 0.01);
        expect(Math.min(...corners.flat())).toBeGreaterThan(-1e-9);
        expect(Math.max(...corners.map(([x]) => x))).toBeLessThan(frame.widthMm + 1e-9);
        expect(Math.max(...corners.map(([, y]) => y))).toBeLessThan(frame.heightMm + 1e-9);
        if (edge === 30) expect(placing.turnRad).toBe(0);
      }
    }
  });
});

describe('the largest net that fits a page', () => {
  // An earlier trial with other rules for tabs and angles in steps found `tried`, in half millimetres. Ours may not fall
  // more than two millimetres short of it, which is what a tab on another side of a seam can do.
  test.each<[string, SolidSpec, number, number, readonly [number, number]]>([
    ['cube', { solid: 'cube', sizes: { edge: 50 } }, 66, 63, [62, 61.5]],
    ['tetrahedron', { solid: 'tetrahedron', sizes: { edge: 50 } }, 119.5, 115.5, [120.5, 117]],
    ['octahedron', { solid: 'octahedron', sizes: { edge: 50 } }, 83, 82.5, [84.5, 84]],
    ['dodecahedron', { solid: 'dodecahedron', sizes: { edge: 30 } }, 34.5, 32.5, [34, 31.5]],
    ['icosahedron', { solid: 'icosahedron', sizes: { edge: 30 } }, 51.5, 49.5, [51.5, 50]],
    [
      'square pyramid, h = a',
      { solid: 'regular-pyramid', sizes: { sides: 4, edge: 50, height: 50 } },
      85.5,
      85.5,
      [85.5, 85.5],
    ],
    [
      'hexagonal prism, h = 2a',
      { solid: 'regular-prism', sizes: { sides: 6, edge: 30, height: 60 } },
      41,
      39.5,
      [36, 37.5],
    ],
    [
      'triangular prism, h = 2a',
      { solid: 'regular-prism', sizes: { sides: 3, edge: 30, height: 60 } },
      61.5,
      63.5,
      [61.5, 63.5],
    ],
  ])('%s', (_, spec, onA4, onLetter, tried) => {
    [onA4, onLetter].forEach((expected, k) => {
      const frame = [A4, LETTER][k]!;
      const found = largestThatFits(spec, frame, TABS);
      if (!found.ok) throw new Error('no largest');
      const { largestMm, sizes, size } = found.value;
      expect(largestMm, frame.paper).toBe(expected);
      expect(largestMm).toBeGreaterThanOrEqual(tried[k]! - 2);
      const grown = scaled({ solid: spec.solid, sizes }, (largestMm + 1) / sizes[size]!);
      expect(netFits(netOf({ solid: spec.solid, sizes }, frame), frame), 'fits').toBe(true);
      expect(netFits(netOf(grown, frame), frame), 'a millimetre more').toBe(false);
    });
  });

  test('a cylinder, loose discs: 2 pi r and a tab of 8 mm along the page', () => {
    for (const frame of [A4, LETTER]) {
      const found = largestThatFits({ solid: 'cylinder', sizes: { radius: 10, height: 32 } }, frame, TABS);
      const largestMm = (frame.heightMm - 8) / (2 * Math.PI);
      expect(found).toMatchObject({ ok: true, value: { size: 'radius', largestMm: Math.floor(largestMm * 2) / 2 } });
    }
  });

  test('a ball has none, and sizes that are no solid are told', () => {
    expect(largestThatFits({ solid: 'sphere', sizes: { radius: 20 } }, A4, TABS)).toMatchObject({
      ok: false,
      issues: [{ code: 'no-net' }],
    });
    expect(largestThatFits({ solid: 'cube', sizes: {} }, A4, TABS)).toMatchObject({
      ok: false,
      issues: [{ code: 'size-missing' }],
    });
  });
});

describe('a net in parts', () => {
  test.each([
    [50, 1],
    [70, 2],
    [80, 2],
    [100, 4],
  ])('a cube of %s mm on A4: %s', (edge, parts) => {
    const whole = netOf({ solid: 'cube', sizes: { edge } });
    const split = splitNet(whole, A4);
    if (!split.ok) throw new Error('not split');
    expect(split.value.parts).toHaveLength(parts);
    sound(split.value, A4);
  });

  test.each<SolidSpec>([
    { solid: 'dodecahedron', sizes: { edge: 70 } },
    { solid: 'icosahedron', sizes: { edge: 90 } },
    { solid: 'regular-frustum', sizes: { sides: 7, edge: 60, topEdge: 40, height: 110 } },
    { solid: 'rectangular-pyramid', sizes: { length: 140, width: 90, height: 120 } },
  ])('$solid: one more tab for every fold that is cut', (spec) => {
    const split = splitNet(netOf(spec), LETTER);
    if (!split.ok) throw new Error('not split');
    expect(split.value.parts.length).toBeGreaterThan(1);
    sound(split.value, LETTER);
  });

  test.each<SolidSpec>([
    { solid: 'cube', sizes: { edge: 200 } },
    { solid: 'cylinder', sizes: { radius: 50, height: 80 } },
    { solid: 'cone', sizes: { radius: 150, height: 80 } },
  ])('$solid: never through a face', (spec) => {
    expect(splitNet(netOf(spec), A4)).toEqual({
      ok: false,
      issues: [{ code: 'face-too-large', path: [], details: { paper: 'A4', solid: spec.solid } }],
    });
  });

  test('a net that is too large is told with the largest that fits and the number of parts', () => {
    const told = checkFit(netOf({ solid: 'cube', sizes: { edge: 100 } }), A4);
    expect(told).toMatchObject({
      ok: false,
      issues: [
        { code: 'too-large', path: [], details: { solid: 'cube', paper: 'A4', size: 'edge', largestMm: 66, parts: 4 } },
      ],
    });
    expect(checkFit(netOf({ solid: 'cube', sizes: { edge: 50 } }), A4)).toMatchObject({ ok: true });
    expect(checkFit(netOf({ solid: 'cone', sizes: { radius: 150, height: 80 } }), A4)).toMatchObject({
      issues: [{ code: 'too-large', details: { parts: 0 } }],
    });
  });
});

function netOf(spec: SolidSpec, frame?: Frame): Net {
  const net = makeNet(solidOf(spec), frame === undefined ? TABS : { ...TABS, frame });
  if (!net.ok) throw new Error(`${spec.solid} has no net`);
  return net.value;
}

/** Every part fits, folds back, and there is one tab more for every part more. */
function sound(net: Net, frame: Frame): void {
  const { straightEdges, flatFaces } = net.solid.counts;
  const folds = net.parts.flatMap((part) => part.folds.filter(({ kind }) => kind === 'face'));
  const tabs = net.parts.flatMap((part) => part.tabs);
  expect(netFits(net, frame)).toBe(true);
  expect(folds).toHaveLength(flatFaces - net.parts.length);
  expect(folds.length + tabs.length).toBe(straightEdges);
  expect(net.parts.flatMap(({ faces }) => faces)).toHaveLength(flatFaces);
  expect(foldBackErrorMm(net)).toBeLessThan(1e-9);
}

const rectangle = (long: number, wide: number) =>
  [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ] as const;

function scaleAt(ring: readonly (readonly [number, number])[], turnRad: number): number {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const [across, up] = [ring.map(([x, y]) => cos * x - sin * y), ring.map(([x, y]) => sin * x + cos * y)];
  const size = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return Math.min(194 / size(across), 267 / size(up));
}
