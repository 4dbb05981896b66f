// Faces, edges, counts, support function and scaling of every solid.

import type { FlatFace, Solid, Vec3 } from '@cairnmark/geometry';
import { meshOf, supportPoint } from '@cairnmark/geometry';
import { expect } from 'vitest';
import { expectNear, expectPointNear } from '../../tools/within.ts';
import { pointsOf } from '../mesh-integrals.ts';
import { made, onEverySolid } from '../solid-cases.ts';

const FAMILY = { full: 300, part: 20 };
/** Rounding of corners and areas, relative to the size of the solid. */
const ROUNDING = 1e-12;

onEverySolid('flat faces are flat, face outward, and carry their corners counter-clockwise', FAMILY, (solid) => {
  const size = reach(solid);
  for (const face of solid.flatFaces) {
    expectNear(Math.hypot(...face.normal), 1, { absolute: 1e-14 }, 'unit normal');
    const [first, ...others] = face.kind === 'disc' ? [face.centre] : face.corners;
    for (const corner of others) expectNear(dot(face.normal, minus(corner, first!)), 0, { absolute: ROUNDING * size });
    const furthest = supportPoint(solid.body, face.normal);
    expectNear(dot(face.normal, minus(furthest, first!)), 0, { absolute: ROUNDING * size }, 'nothing lies outside');
    if (face.kind === 'polygon') expect(dot(areaVector(face.corners), face.normal)).toBeGreaterThan(0);
  }
});

onEverySolid('counts agree with the geometry', FAMILY, (solid) => {
  const { counts, flatFaces, curvedSurfaces, body } = solid;
  const discs = flatFaces.filter(({ kind }) => kind === 'disc');
  const loops = flatFaces.flatMap((face) => (face.kind === 'polygon' ? [face.corners] : []));
  const edges = loops.flatMap((loop) => loop.map((corner, k) => [name(corner), name(loop[(k + 1) % loop.length]!)]));
  expect(counts.flatFaces).toBe(flatFaces.length);
  expect(counts.curvedSurfaces).toBe(curvedSurfaces.length);
  expect(counts.curvedEdges).toBe(discs.length);
  expect(counts.vertices).toBe(new Set(loops.flat().map(name)).size);
  expect(counts.straightEdges).toBe(new Set(edges.map((edge) => [...edge].sort().join(' | '))).size);
  expect(new Set(edges.map((edge) => edge.join(' > '))).size, 'each edge once each way').toBe(2 * counts.straightEdges);
  const tips = curvedSurfaces.length === 0 ? [] : body.filter(({ kind }) => kind === 'points');
  expect(counts.apexes).toBe(tips.length);
  if (counts.curvedSurfaces === 0) expect(counts.vertices - counts.straightEdges + counts.flatFaces).toBe(2);
});

onEverySolid('the mesh is closed: every edge is used twice, once each way', { full: 30, part: 3 }, (solid) => {
  const { triangles } = meshOf(solid, 24);
  const used = new Map<string, number>();
  for (let k = 0; k < triangles.length; k += 3) {
    const [a, b, c] = triangles.slice(k, k + 3);
    for (const edge of [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]) used.set(edge, (used.get(edge) ?? 0) + 1);
  }
  expect(used.size).toBeGreaterThan(0);
  for (const [edge, times] of used) {
    expect(times, edge).toBe(1);
    expect(used.get(edge.split(' ').reverse().join(' ')), `${edge} backwards`).toBe(1);
  }
});

onEverySolid('flat faces and net figures add up to the surface', FAMILY, (solid) => {
  const flat = solid.flatFaces.reduce((sum, face) => sum + areaOf(face), 0);
  const curved = solid.curvedSurfaces.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  expectNear(flat + curved, solid.surfaceMm2, { relative: ROUNDING });
  if (solid.lateralMm2 !== null && solid.centroids.openShell !== null) {
    const level = solid.flatFaces.filter(({ normal }) => Math.abs(normal[2]) > 1 - 1e-9);
    const ends = level.reduce((sum, face) => sum + areaOf(face), 0);
    expectNear(solid.lateralMm2 + ends, solid.surfaceMm2, { relative: ROUNDING }, 'lateral');
  }
});

onEverySolid('the support function finds what a search of the mesh finds', { full: 50, part: 4 }, (solid) => {
  const facets = 128;
  // A chord of a circle of radius r lies r (1 - cos(pi / n)) inside it; on a ball facets lie both ways.
  const bound = 2 * reach(solid) * (1 - Math.cos(Math.PI / facets)) + ROUNDING * reach(solid);
  const points = pointsOf(meshOf(solid, facets).positions);
  for (const direction of DIRECTIONS) {
    const searched = Math.max(...points.map((point) => dot(point, direction)));
    const found = dot(supportPoint(solid.body, direction), direction);
    expect(found).toBeGreaterThanOrEqual(searched - ROUNDING * reach(solid));
    expect(found).toBeLessThanOrEqual(searched + (solid.curvedSurfaces.length === 0 ? ROUNDING * reach(solid) : bound));
  }
});

onEverySolid(
  'grown k times: lengths k, areas k squared, volume k cubed, counts the same',
  FAMILY,
  (solid, definition) => {
    const k = 1.7;
    const names = definition.fields.filter(({ unit }) => unit === 'mm').map((field) => field.name);
    const sizes = Object.entries(solid.sizes).map(([size, value]) => [size, names.includes(size) ? k * value : value]);
    const grown = made(definition, Object.fromEntries(sizes));
    expectNear(grown.volumeMm3, k ** 3 * solid.volumeMm3, { relative: ROUNDING });
    expectNear(grown.surfaceMm2, k ** 2 * solid.surfaceMm2, { relative: ROUNDING });
    expect(grown.counts).toEqual(solid.counts);
    expect(grown.lateralMm2 === null).toBe(solid.lateralMm2 === null);
    if (grown.lateralMm2 !== null) expectNear(grown.lateralMm2, k ** 2 * solid.lateralMm2!, { relative: ROUNDING });
    expect(grown.slantMm === null).toBe(solid.slantMm === null);
    if (grown.slantMm !== null) expectNear(grown.slantMm, k * solid.slantMm!, { relative: ROUNDING });
    for (const centre of ['full', 'closedShell', 'openShell'] as const) {
      const [small, large] = [solid.centroids[centre], grown.centroids[centre]];
      if (small !== null)
        expectPointNear(
          large!,
          small.map((value) => k * value),
          ROUNDING * k * reach(solid),
        );
    }
    grown.restings.forEach((resting, index) => {
      expectNear(resting.heightMm, k * solid.restings[index]!.heightMm, { relative: ROUNDING });
    });
  },
);

/** Directions in no special relation to any solid: a spiral round the ball. */
const DIRECTIONS: readonly Vec3[] = Array.from({ length: 40 }, (_, k): Vec3 => {
  const z = 1 - (2 * k + 1) / 40;
  const angle = 2.4 * k;
  const r = Math.sqrt(1 - z * z);
  return [r * Math.cos(angle), r * Math.sin(angle), z];
});

const reach = (solid: Solid): number => Math.max(solid.restings[0]!.heightMm, ...Object.values(solid.sizes));
const name = (corner: Vec3): string => corner.join(',');
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const areaOf = (face: FlatFace): number =>
  face.kind === 'disc' ? Math.PI * face.radiusMm ** 2 : Math.hypot(...areaVector(face.corners));

/** Half the sum of corner cross next corner: as long as the face is large, and pointing outward. */
function areaVector(corners: readonly Vec3[]): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  corners.forEach((a, k) => {
    const b = corners[(k + 1) % corners.length]!;
    sum[0] += (a[1] * b[2] - a[2] * b[1]) / 2;
    sum[1] += (a[2] * b[0] - a[0] * b[2]) / 2;
    sum[2] += (a[0] * b[1] - a[1] * b[0]) / 2;
  });
  return sum;
}
