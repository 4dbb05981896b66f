// Sizes given the way pupils measure them, and every fault of sizes told at once.

import type { Sizes, Solid, SolidId } from '@cairnmark/geometry';
import { CATALOGUE, definitionOf, makeSolid } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { expectNear } from '../../tools/within.ts';
import { made, onEverySolid } from '../solid-cases.ts';

/** What a pupil's ruler or string would read on a solid, by the name of the measurement. */
const READINGS: Readonly<Record<string, (solid: Solid) => number>> = {
  diameter: ({ sizes }) => 2 * size(sizes, 'radius'),
  circumference: ({ sizes }) => 2 * Math.PI * size(sizes, 'radius'),
  topDiameter: ({ sizes }) => 2 * size(sizes, 'topRadius'),
  topCircumference: ({ sizes }) => 2 * Math.PI * size(sizes, 'topRadius'),
  topWidth: ({ sizes }) => (size(sizes, 'width') * size(sizes, 'topLength')) / size(sizes, 'length'),
  slant: ({ slantMm }) => slantMm ?? Number.NaN,
  slantLength: ({ sizes }) => {
    const share = 1 - (sizes['topLength'] ?? 0) / size(sizes, 'length');
    return Math.hypot(size(sizes, 'height'), (size(sizes, 'width') / 2) * share);
  },
  slantWidth: ({ sizes }) => {
    return Math.hypot(size(sizes, 'height'), (size(sizes, 'length') - (sizes['topLength'] ?? 0)) / 2);
  },
  slantEdge: ({ sizes, flatFaces }) => {
    // An edge of a face that goes from the base all the way up.
    const edges = flatFaces.flatMap((face) => {
      const corners = face.kind === 'polygon' ? face.corners : [];
      return corners.map((corner, k) => [corner, corners[(k + 1) % corners.length]!] as const);
    });
    const up = edges.find(([a, b]) => Math.abs(b[2] - a[2]) > size(sizes, 'height') / 2)!;
    return Math.hypot(...[0, 1, 2].map((axis) => up[0][axis]! - up[1][axis]!));
  },
};

onEverySolid('a size given in another way makes the same solid', { full: 200, part: 20 }, (solid, definition) => {
  for (const { name, otherwise } of definition.fields) {
    for (const way of otherwise) {
      const { [name]: left, ...others } = solid.sizes;
      const reading = READINGS[way]!(solid);
      const again = made(definition, { ...others, [way]: reading });
      // A slant loses digits where it hardly differs from what it leans over: its square root of a difference.
      const lost = name === 'height' ? (reading / size(solid.sizes, 'height')) ** 2 : 1;
      expectNear(size(again.sizes, name), left!, { relative: 1e-14 * lost }, way);
      expect(Object.keys(again.sizes)).toEqual(definition.fields.map((field) => field.name));
      expectNear(again.volumeMm3, solid.volumeMm3, { relative: 1e-13 * lost });
    }
  }
});

test.each(Object.values(CATALOGUE))(
  '$id: no size, every size wrong, a size too many, all told at once',
  (definition) => {
    const names = definition.fields.map(({ name }) => name);
    expect(issues(definition.id, {})).toEqual(names.map((name) => ['size-missing', name]));
    const infinite = Object.fromEntries(names.map((name) => [name, Number.POSITIVE_INFINITY]));
    expect(issues(definition.id, infinite)).toEqual(names.map((name) => ['size-not-finite', name]));
    expect(issues(definition.id, { ...definition.example, girth: 3 })).toEqual([['size-unknown', 'girth']]);
    expect(issues(definition.id, definition.example)).toEqual([]);
  },
);

describe('single faults', () => {
  test.each<[string, SolidId, Sizes, readonly (readonly [string, string])[]]>([
    [
      'zero and negative',
      'cylinder',
      { radius: 0, height: -3 },
      [
        ['size-not-positive', 'radius'],
        ['size-not-positive', 'height'],
      ],
    ],
    ['not a number', 'cube', { edge: Number.NaN }, [['size-not-finite', 'edge']]],
    ['more than ten metres', 'cube', { edge: 10_001 }, [['size-too-large', 'edge']]],
    ['ten metres', 'cube', { edge: 10_000 }, []],
    ['less than a tenth of a millimetre', 'cube', { edge: 0.09 }, [['size-too-small', 'edge']]],
    ['a tenth of a millimetre', 'cube', { edge: 0.1 }, []],
    ['a circumference is judged by its radius', 'sphere', { circumference: 62_000 }, []],
    ['and refused by its own name', 'sphere', { circumference: 63_000 }, [['size-too-large', 'circumference']]],
    ['twice', 'cone', { radius: 30, diameter: 60, slant: 50 }, [['size-given-twice', 'diameter']]],
    [
      'twice, and another missing',
      'cone',
      { radius: 30, diameter: 60 },
      [
        ['size-given-twice', 'diameter'],
        ['size-missing', 'height'],
      ],
    ],
    ['half a side', 'regular-prism', { sides: 4.5, edge: 30, height: 50 }, [['sides-not-whole', 'sides']]],
    ['two sides', 'antiprism', { sides: 2, edge: 30 }, [['sides-out-of-range', 'sides']]],
    ['thirteen sides', 'regular-pyramid', { sides: 13, edge: 30, height: 50 }, [['sides-out-of-range', 'sides']]],
    ['a slant as long as the radius', 'cone', { radius: 30, slant: 30 }, [['slant-too-short', 'slant']]],
    [
      'a slant shorter than the in-radius',
      'regular-pyramid',
      { sides: 4, edge: 60, slant: 29 },
      [['slant-too-short', 'slant']],
    ],
    ['a slant that leaves no height', 'cone', { radius: 30, slant: 30.0001 }, [['size-too-small', 'slant']]],
    ['a slant on sizes at fault is not blamed', 'cone', { radius: -3, slant: 2 }, [['size-not-positive', 'radius']]],
    [
      'a triangle that does not close',
      'triangular-prism',
      { a: 30, b: 90, c: 50, height: 70 },
      [['triangle-impossible', 'b']],
    ],
    [
      'a triangle without area',
      'triangular-prism',
      { a: 30, b: 20, c: 50, height: 70 },
      [['triangle-impossible', 'c']],
    ],
    [
      'inches that close to a rounding',
      'triangular-prism',
      { a: 25.4, b: 50.8, c: 76.2, height: 70 },
      [['triangle-impossible', 'c']],
    ],
    ['a longest side a', 'triangular-prism', { a: 90, b: 30, c: 50, height: 70 }, [['triangle-impossible', 'a']]],
    [
      'top wider than base',
      'cone-frustum',
      { radius: 30, topRadius: 50, height: 70 },
      [['frustum-upside-down', 'topRadius']],
    ],
    [
      'top as wide as base',
      'regular-frustum',
      { sides: 5, edge: 30, topEdge: 30, height: 70 },
      [['frustum-upside-down', 'topEdge']],
    ],
    [
      'top longer than base',
      'rectangular-frustum',
      { length: 50, width: 30, topLength: 60, height: 70 },
      [['frustum-upside-down', 'topLength']],
    ],
    [
      'three at once',
      'cone-frustum',
      { topRadius: 0, radius: 20_000, colour: 1 },
      [
        ['size-too-large', 'radius'],
        ['size-not-positive', 'topRadius'],
        ['size-missing', 'height'],
        ['size-unknown', 'colour'],
      ],
    ],
  ])('%s: %s', (_, solid, sizes, expected) => {
    expect(issues(solid, sizes)).toEqual(expected);
  });

  test('the numbers for the sentence', () => {
    expect(makeSolid({ solid: 'cone', sizes: { radius: 30, slant: 20 } })).toEqual({
      ok: false,
      issues: [{ code: 'slant-too-short', path: ['sizes', 'slant'], details: { slantMm: 20, runMm: 30 } }],
    });
    expect(makeSolid({ solid: 'triangular-prism', sizes: { a: 30, b: 90, c: 50, height: 70 } })).toEqual({
      ok: false,
      issues: [{ code: 'triangle-impossible', path: ['sizes', 'b'], details: { longestMm: 90, othersMm: 80 } }],
    });
    expect(makeSolid({ solid: 'antiprism', sizes: { sides: 2, edge: 20_000 } })).toEqual({
      ok: false,
      issues: [
        { code: 'sides-out-of-range', path: ['sizes', 'sides'], details: { sides: 2, fewest: 3, most: 12 } },
        { code: 'size-too-large', path: ['sizes', 'edge'], details: { sizeMm: 20_000, mostMm: 10_000 } },
      ],
    });
  });
});

describe('the catalogue', () => {
  test('every entry stands under its own id', () => {
    for (const [id, definition] of Object.entries(CATALOGUE)) expect(definition.id).toBe(id);
    expect(Object.keys(CATALOGUE).length).toBe(19);
  });

  test('a name that is no solid is a mistake of the program', () => {
    expect(() => definitionOf('toString' as SolidId)).toThrow(RangeError);
  });
});

function issues(solid: SolidId, sizes: Sizes): readonly (readonly [string, unknown])[] {
  const result = makeSolid({ solid, sizes });
  if (result.ok) return [];
  return result.issues.map(({ code, path }) => [code, path.slice(1).join('.')]);
}

function size(sizes: Sizes, name: string): number {
  return sizes[name] ?? Number.NaN;
}
