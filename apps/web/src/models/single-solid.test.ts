// One solid as a file, of every solid of the catalogue: read back by readers that share nothing with what wrote it.

import type { Solid, Vec3 } from '@cairnmark/geometry';
import { makeSolid, supportPoint } from '@cairnmark/geometry';
import manifoldModule from 'manifold-3d';
import type { Mesh } from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { STLLoader } from 'three/addons/loaders/STLLoader.js';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Triangle } from '../../../../tests/reference/mesh-integrals.ts';
import { integrate } from '../../../../tests/reference/mesh-integrals.ts';
import { checkClosed, cornerNumbers } from '../../../../tests/reference/models/closed.ts';
import { readGlb } from '../../../../tests/reference/models/glb.ts';
import { readStl } from '../../../../tests/reference/models/stl.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { sagittaMm } from './facets.ts';
import { alone, ReaderOfBlobs, solids } from './for-tests.ts';
import { writeModel } from './write-model.ts';

const wasm = await manifoldModule();
wasm.setup();

beforeAll(() => void vi.stubGlobal('FileReader', ReaderOfBlobs));
afterAll(() => void vi.unstubAllGlobals());

/** Floats of 32 bits keep 6e-8 of a length; a volume is a product of three, summed over hundreds of triangles. */
const FLOATS = 1e-6;

/** Large and small, where the facets are fewest and most. */
const ROUND = (
  [
    { solid: 'sphere', sizes: { radius: 3 } },
    { solid: 'sphere', sizes: { radius: 700 } },
    { solid: 'hemisphere', sizes: { radius: 50 } },
    { solid: 'cylinder', sizes: { radius: 0.1, height: 7 } },
    { solid: 'cylinder', sizes: { radius: 9000, height: 5 } },
    { solid: 'cone', sizes: { radius: 35, height: 3 } },
    { solid: 'cone-frustum', sizes: { radius: 7, topRadius: 0.3, height: 500 } },
  ] as const
).map((spec): Solid => {
  const made = makeSolid(spec);
  if (!made.ok) throw new RangeError(JSON.stringify(made.issues));
  return made.value;
});

const all = [...solids, ...ROUND].map((solid): readonly [string, Solid] => [
  `${solid.id} ${Object.values(solid.sizes).map((size) => Number(size.toPrecision(3)))}`,
  solid,
]);

const stlOf = async (solid: Solid): Promise<ArrayBuffer> => writeModel('stl', 'Piece', [alone(solid)]);
const glbOf = async (solid: Solid): Promise<ArrayBuffer> => writeModel('glb', 'Piece', [alone(solid)]);

describe.each(all)('%s', (_, solid) => {
  it('as STL: closed, turned outward, in mm, and its volume but for what the facets lie inside', async () => {
    const bytes = await stlOf(solid);
    const { head, triangles } = readStl(new Uint8Array(bytes));
    expect(head).toBe('Cairnmark, mm, piece');
    expect(triangles.length).toBeLessThanOrEqual(10_000);
    checkClosed(triangles);
    holdsVolume(solid, integrate(triangles).volume);
    expectNear(highest(triangles, 2), solid.restings[0]!.heightMm, { relative: FLOATS }, 'height');
    expectNear(-highest(triangles, 2, -1), 0, { absolute: 0 }, 'stands on z = 0');
    liesInside(solid, triangles);
    // Second readers: three's own, and one that takes only what closes and does not cross itself.
    const read = new STLLoader().parse(bytes).getAttribute('position');
    expect([...read.array]).toEqual(triangles.flat(2));
    const theirs = manifoldOf(triangles);
    expect([theirs.status(), theirs.genus(), theirs.numTri()]).toEqual(['NoError', 0, triangles.length]);
    expectNear(theirs.volume(), integrate(triangles).volume, { relative: FLOATS }, 'as a manifold');
    theirs.delete();
  });

  it('as glTF: the same triangles in metres with y up, and the front to +z', async () => {
    const [stl, bytes] = [readStl(new Uint8Array(await stlOf(solid))), await glbOf(solid)];
    const { json, parts } = readGlb(new Uint8Array(bytes));
    expect([json.scenes.map(({ name }) => name), parts.map(({ name }) => name)]).toEqual([['Piece'], [solid.id]]);
    const { triangles } = parts[0]!;
    checkClosed(triangles);
    holdsVolume(solid, integrate(triangles).volume * 1e9);
    const turned = stl.triangles.flat().map(([x, y, z]): Vec3 => [x / 1000, z / 1000, -y / 1000]);
    const far = Math.max(...turned.flat().map(Math.abs));
    const apart = triangles.flat().map((point, k) => Math.hypot(...minus(point, turned[k]!)));
    expectNear(Math.max(...apart), 0, { absolute: FLOATS * far }, 'against the STL');
    expectPointNear(parts[0]!.colour, [...[0x6e, 0x9f, 0xdd].map(linear), 1], FLOATS, 'colour');
    // A second reader: three's own.
    const { scene } = await new GLTFLoader().parseAsync(bytes, '');
    const [mesh] = scene.children as [Mesh];
    expect([mesh.name, mesh.geometry.getAttribute('position').count]).toEqual([solid.id, 3 * triangles.length]);
  });
});

/**
 * Inscribed facets: of a convex body whose surface they lie at most s inside of, they hold all but s times its surface.
 * (Whatever lies more than s inside is within them, and the layer between is no larger than that.)
 */
function holdsVolume(solid: Solid, volumeMm3: number): void {
  const rounding = FLOATS * solid.volumeMm3;
  expect(volumeMm3).toBeLessThanOrEqual(solid.volumeMm3 + rounding);
  expect(volumeMm3).toBeGreaterThanOrEqual(solid.volumeMm3 - (sagittaMm(solid) ?? 0) * solid.surfaceMm2 - rounding);
}

/** Of each triangle: the solid reaches no further out than the sagitta, and not less far. */
function liesInside(solid: Solid, triangles: readonly Triangle[]): void {
  const size = Math.max(...triangles.flat(2).map(Math.abs));
  for (const [a, b, c] of triangles) {
    const normal = normalOf([a, b, c]);
    const outMm = dot(supportPoint(solid.body, normal), normal) - dot(a, normal);
    // The normal of a thin triangle is off by as much as its corners are rounded over its width.
    const roundingMm = (FLOATS * size * size) / width([a, b, c]);
    expect(outMm).toBeLessThanOrEqual((sagittaMm(solid) ?? 0) + roundingMm);
    expect(outMm).toBeGreaterThanOrEqual(-roundingMm);
  }
}

/** A byte of a colour as light: IEC 61966-2-1 (sRGB), for values past its straight part. glTF 2.0, 3.9.2, counts light. */
const linear = (byte: number): number => ((byte / 255 + 0.055) / 1.055) ** 2.4;

function manifoldOf(triangles: readonly Triangle[]): InstanceType<typeof wasm.Manifold> {
  const numbers = cornerNumbers(triangles);
  const corners = new Float32Array(3 * (Math.max(...numbers) + 1));
  for (const [k, corner] of triangles.flat().entries()) corners.set(corner, 3 * numbers[k]!);
  const mesh = { numProp: 3, vertProperties: corners, triVerts: new Uint32Array(numbers) };
  return new wasm.Manifold(new wasm.Mesh(mesh));
}

const highest = (triangles: readonly Triangle[], axis: 0 | 1 | 2, sign: 1 | -1 = 1): number =>
  Math.max(...triangles.flat().map((corner) => sign * corner[axis]));

function normalOf([a, b, c]: Triangle): Vec3 {
  const out = cross(minus(b, a), minus(c, a));
  const length = Math.hypot(...out);
  return [out[0] / length, out[1] / length, out[2] / length];
}

/** Least height of a triangle. */
function width([a, b, c]: Triangle): number {
  const longest = Math.max(Math.hypot(...minus(b, a)), Math.hypot(...minus(c, b)), Math.hypot(...minus(a, c)));
  return Math.hypot(...cross(minus(b, a), minus(c, a))) / longest;
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
