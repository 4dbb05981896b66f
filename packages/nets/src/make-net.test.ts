// Nets by hand and by the book: which side shows, published figures of cones, tabs that are too small.

import type { SolidSpec, Vec2 } from '@cairnmark/geometry';
import { length2, sub2 } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { foldBackErrorMm, pointsOf } from '../../../tests/reference/folded-nets.ts';
import { solidOf } from '../../../tests/reference/solid-cases.ts';
import { expectNear, expectPrinted } from '../../../tests/tools/within.ts';
import { makeNet } from './make-net.ts';
import type { Net, NetPart } from './net.ts';
import { flattenPath } from './path/measure.ts';
import { sendPath } from './path/path.ts';

const EXACT = { relative: 1e-12 };

describe('the print shows the inside: every fold is a valley fold', () => {
  const net = netOf({ solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } });

  test('the base of a lopsided prism is seen from inside as from above, sides c, a, b; the top the other way', () => {
    expect(turning(net, 0)).toBe('50 30 40');
    expect(turning(net, 1)).toBe('50 40 30');
  });

  test('it stands as the prism stands: the base below its middle side, the top above', () => {
    const [lower, upper] = [0, 1].map((end) => net.parts[0]!.faces.find(({ face }) => face === end)!.centroid[1]);
    const walls = net.parts[0]!.faces.filter(({ face }) => face > 1).map(({ centroid }) => centroid[1]);
    expect(lower).toBeLessThan(Math.min(...walls));
    expect(upper).toBeGreaterThan(Math.max(...walls));
  });

  test('folded towards the print it is the prism; the drawing turned over folds to the mirror image', () => {
    expect(foldBackErrorMm(net)).toBeLessThan(1e-9);
    const over = { ...net, parts: net.parts.map(turnedOver) };
    expect(foldBackErrorMm(over)).toBeGreaterThan(5);
  });

  test('one fold bent a thousandth of a degree too far shows', () => {
    const tooFar = (angle: number, fold: number): number => (fold === 1 ? angle + Math.PI / 180 / 1000 : angle);
    expect(foldBackErrorMm(net, tooFar)).toBeGreaterThan(1e-4);
  });
});

describe('the wall of a cone is a sector of 360 r / s degrees', () => {
  // Math Forum, Ask Dr. Math FAQ, "Building a Cone": T = 2 pi r / s. Mathwords, "Net of a Cone": 3 and 9 give 120. Math
  // Central (University of Regina), question of September 2006: 6.2 and 25.8 give 86.5. ceemrr.com, Geometry 2, "Drawings
  // and Nets", example 2: diameter 10, height 12 give 138.5 degrees and 204.2 square inches.
  test.each([
    [{ radius: 30, slant: 50 }, [216, 0]],
    [{ radius: 30, slant: 90 }, [120, 0]],
    [{ radius: 62, slant: 258 }, [86.5, 0.05]],
    [{ diameter: 10, height: 12 }, [138.5, 0.05]],
  ] as const)('%j', (sizes, printed) => {
    const [wall] = netOf({ solid: 'cone', sizes }).parts;
    expectPrinted(openDegrees(wall!), printed);
  });

  test('diameter 10, height 12: 204.2 square', () => {
    const [wall] = netOf({ solid: 'cone', sizes: { diameter: 10, height: 12 } }).parts;
    expectPrinted(wall!.faces[0]!.areaMm2, [204.2, 0.05]);
  });

  test('radius 3 and slant 5 give exactly 216 degrees', () => {
    const [wall] = netOf({ solid: 'cone', sizes: { radius: 3, slant: 5 } }).parts;
    expectNear(openDegrees(wall!), 216, { absolute: 1e-11 });
  });
});

describe('round solids', () => {
  test('the wall of a cylinder is as long as its rim; each disc is a part of its own', () => {
    const { parts } = netOf({ solid: 'cylinder', sizes: { radius: 25, height: 80 } });
    expect(parts.map(({ faces }) => faces.map(({ kind }) => kind))).toEqual([['rectangle'], ['disc'], ['disc']]);
    const corners = pointsOf(parts[0]!.faces[0]!.outline);
    expectNear(Math.max(...corners.map(([x]) => x)), 157.07963267948966, EXACT, '2 pi r');
    expect(parts.slice(1).map(({ tabs, folds }) => [tabs.length, folds.length])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  // By hand: the root of 8 x 25 x 0.4 is 8.94, 17.6 times round; of 8 x 30 x 0.4 it is 9.80, 19.2 times round.
  test.each([
    [{ solid: 'cylinder', sizes: { radius: 25, height: 80 } } as const, 18 + 18],
    [{ solid: 'cone', sizes: { radius: 30, height: 40 } } as const, 20],
  ])('the straight folds of teeth stay within 0.4 mm of the rim: $solid', (spec, count) => {
    const [wall] = netOf(spec).parts;
    const teeth = wall!.tabs.filter(({ kind }) => kind === 'tooth');
    expect(teeth).toHaveLength(count);
    for (const { landing } of teeth) {
      const radiusMm = spec.sizes.radius;
      const half = length2(sub2(landing[0]!, landing[3]!)) / 2;
      expect(radiusMm - Math.sqrt(radiusMm ** 2 - half ** 2)).toBeLessThan(0.4 + 1e-9);
      for (const corner of landing) expect(length2(corner)).toBeLessThan(radiusMm + 1e-9);
    }
  });
});

describe('tabs', () => {
  test('they are as deep as asked where there is room, never deeper', () => {
    const spec: SolidSpec = { solid: 'cube', sizes: { edge: 50 } };
    for (const tabDepthMm of [5, 8, 10]) {
      const depths = netOf(spec, tabDepthMm).parts.flatMap(({ tabs }) => tabs.map(({ depthMm }) => depthMm));
      expect(new Set(depths)).toEqual(new Set([tabDepthMm]));
    }
  });

  test('on a solid for tweezers they are too small for glue, and that is told', () => {
    expect(netOf({ solid: 'cube', sizes: { edge: 8 } }).tooSmallTabs).toBe(true);
    expect(netOf({ solid: 'cube', sizes: { edge: 50 } }).tooSmallTabs).toBe(false);
  });

  test.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('a depth of %s is a mistake of the caller', (tabDepthMm) => {
    expect(() => makeNet(solidOf({ solid: 'cube', sizes: { edge: 30 } }), { tabDepthMm })).toThrow(RangeError);
  });
});

test.each(['sphere', 'hemisphere'] as const)('a %s is bought, not folded', (solid) => {
  const net = makeNet(solidOf({ solid, sizes: { radius: 20 } }), { tabDepthMm: 8 });
  expect(net).toEqual({ ok: false, issues: [{ code: 'no-net', path: [], details: { solid } }] });
});

// Dimensions of the demo kit; each net has tabs deep enough for glue.
test.each<SolidSpec>([
  { solid: 'cube', sizes: { edge: 50 } },
  { solid: 'rectangular-prism', sizes: { length: 80, width: 50, height: 30 } },
  { solid: 'regular-prism', sizes: { sides: 3, edge: 50, height: 80 } },
  { solid: 'regular-prism', sizes: { sides: 6, edge: 30, height: 80 } },
  { solid: 'rectangular-pyramid', sizes: { length: 50, width: 50, height: 60 } },
  { solid: 'tetrahedron', sizes: { edge: 70 } },
  { solid: 'octahedron', sizes: { edge: 50 } },
  { solid: 'rectangular-frustum', sizes: { length: 60, width: 60, topLength: 40, height: 50 } },
  { solid: 'cylinder', sizes: { diameter: 50, height: 80 } },
  { solid: 'cone', sizes: { diameter: 60, height: 40 } },
  { solid: 'dodecahedron', sizes: { edge: 30 } },
  { solid: 'icosahedron', sizes: { edge: 40 } },
])('$solid of the demo kit: every tab is 8 mm deep, and scissors get 6 degrees into every notch', (spec) => {
  for (const { cut, tabs } of netOf(spec).parts) {
    for (const { depthMm } of tabs) expectNear(depthMm, 8, EXACT);
    expect(sharpestNotchDegrees(flattenPath(cut, 0.01))).toBeGreaterThan(6 - 1e-9);
  }
});

function netOf(spec: SolidSpec, tabDepthMm = 8): Net {
  const net = makeNet(solidOf(spec), { tabDepthMm });
  if (!net.ok) throw new Error(`${spec.solid} has no net`);
  return net.value;
}

/** The lengths of a face's sides, counter-clockwise on the sheet, the longest first. */
function turning({ parts }: Net, face: number): string {
  const ring = pointsOf(parts[0]!.faces.find((one) => one.face === face)!.outline);
  const lengths = ring.map((corner, k) => Math.round(length2(sub2(ring[(k + 1) % ring.length]!, corner))));
  const longest = lengths.indexOf(Math.max(...lengths));
  return [...lengths.slice(longest), ...lengths.slice(0, longest)].join(' ');
}

/** As it looks from behind, corners in the same order in space. */
function turnedOver(part: NetPart): NetPart {
  const mirror = ([x, y]: Vec2): Vec2 => [-x, y];
  return {
    ...part,
    faces: part.faces.map((face) => ({ ...face, outline: sendPath(face.outline, mirror) })),
    folds: part.folds.map((fold) => {
      const { start, steps } = sendPath(fold.path, mirror);
      return { ...fold, path: { start: steps[0]!.to, steps: [{ kind: 'line', to: start }], closed: false } };
    }),
    tabs: [],
  };
}

/** The least angle outside a ring that runs counter-clockwise, between two sides that meet. */
function sharpestNotchDegrees(ring: readonly Vec2[]): number {
  const outside = ring.map((corner, k) => {
    const [x, y] = sub2(ring.at(k - 1)!, corner);
    const [u, v] = sub2(ring[(k + 1) % ring.length]!, corner);
    const inside = Math.atan2(u * y - v * x, u * x + v * y);
    return 360 - (((inside / Math.PI) * 180 + 360) % 360);
  });
  return Math.min(...outside);
}

/** The angle at the tip between the two straight sides of the sector, on the side of the paper, degrees. */
function openDegrees({ faces }: NetPart): number {
  const { start, steps } = faces[0]!.outline;
  const end = steps.filter(({ kind }) => kind === 'curve').at(-1)!.to;
  const [from, to] = [Math.atan2(start[1], start[0]), Math.atan2(end[1], end[0])];
  return (((to - from) * 180) / Math.PI + 360) % 360;
}
