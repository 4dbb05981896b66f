// A convex solid with flat faces only, from its vertices and faces: outward normals, centres of mass, counts.
// Own frame, mm. The centre of a pyramid lies a quarter of the way up from its base: the solid is cut into pyramids.

import type { Step } from '../kernel/formula.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, dot3, length3, scale3, sub3, unit3 } from '../kernel/vec.ts';
import type { Body } from './body.ts';
import type { Built } from './define.ts';
import type { Centroids, FlatFace } from './types.ts';

/** Corners of a face as indices into the vertices, counter-clockwise seen from outside. */
export type Loop = readonly number[];

/** The vertices and faces of a convex solid; the first face is the one it stands on. */
export interface Polyhedron {
  readonly vertices: readonly Vec3[];
  readonly loops: readonly Loop[];
}

export interface FlatFacedDetails {
  readonly volume: readonly Step[];
  readonly surface: readonly Step[];
  readonly lateralMm2: number | null;
  readonly slantMm: number | null;
  /** Whether a shell of it can be left open at the base. */
  readonly hasBase: boolean;
  /** Name of a way to rest, and the index of the face it rests on. */
  readonly sides: Readonly<Record<string, number>>;
}

/** A flat-faced solid: `shape` gives all that follows from vertices and faces, `details` what its formulas say. */
export function flatFaced(shape: Polyhedron, details: FlatFacedDetails): Built {
  const faces = shape.loops.map((loop) => measureFace(cornersOf(shape, loop)));
  const body: Body = [{ kind: 'points', points: shape.vertices }];
  return {
    lateralMm2: details.lateralMm2,
    slantMm: details.slantMm,
    counts: {
      flatFaces: faces.length,
      curvedSurfaces: 0,
      straightEdges: shape.loops.reduce((ends, loop) => ends + loop.length, 0) / 2,
      curvedEdges: 0,
      vertices: shape.vertices.length,
      apexes: 0,
    },
    centroids: centroidsOf(shape.vertices, faces, details.hasBase),
    body,
    flatFaces: faces.map(({ face }) => face),
    curvedSurfaces: [],
    sides: Object.entries(details.sides).map(([id, index]) => {
      return { id, down: at(faces, index).face.normal, contact: 'face' as const };
    }),
    workings: { volume: details.volume, surface: details.surface },
  };
}

interface MeasuredFace {
  readonly face: FlatFace & { readonly kind: 'polygon' };
  readonly areaMm2: number;
  readonly centroid: Vec3;
}

/** A weighted point: volume or area as the weight. */
type Weighted = readonly [weight: number, point: Vec3];

const cornersOf = (shape: Polyhedron, loop: Loop): readonly Vec3[] => loop.map((index) => at(shape.vertices, index));

/** Cuts the face into triangles that fan out from its first corner. */
function measureFace(corners: readonly Vec3[]): MeasuredFace {
  const first = at(corners, 0);
  const spokes = corners.slice(1).map((corner) => sub3(corner, first));
  const crosses = spokes.slice(1).map((spoke, k) => cross3(at(spokes, k), spoke));
  const twiceArea = crosses.reduce(add3);
  const normal = unit3(twiceArea);
  const triangles = crosses.map((cross, k): Weighted => {
    return [dot3(cross, normal) / 2, add3(first, scale3(add3(at(spokes, k), at(spokes, k + 1)), 1 / 3))];
  });
  return {
    face: { kind: 'polygon', normal, corners },
    areaMm2: length3(twiceArea) / 2,
    centroid: balance(triangles),
  };
}

function centroidsOf(vertices: readonly Vec3[], faces: readonly MeasuredFace[], hasBase: boolean): Centroids {
  const tip = balance(vertices.map((vertex): Weighted => [1, vertex]));
  const pyramids = faces.map(({ face, areaMm2, centroid }): Weighted => {
    const heightMm = dot3(face.normal, sub3(centroid, tip));
    return [(areaMm2 * heightMm) / 3, add3(tip, scale3(sub3(centroid, tip), 3 / 4))];
  });
  const sheets = faces.map(({ areaMm2, centroid }): Weighted => [areaMm2, centroid]);
  return {
    full: balance(pyramids),
    closedShell: balance(sheets),
    openShell: hasBase ? balance(sheets.slice(1)) : null,
  };
}

/** The point at which the weighted points balance. */
function balance(parts: readonly Weighted[]): Vec3 {
  const weight = parts.reduce((total, [part]) => total + part, 0);
  const moment = parts.reduce((total, [part, point]) => add3(total, scale3(point, part)), [0, 0, 0] as Vec3);
  return scale3(moment, 1 / weight);
}

/** An element that the recipe of the solid guarantees; RangeError when the recipe is wrong. */
function at<T>(list: readonly T[], index: number): T {
  const found = list[index];
  if (found === undefined) throw new RangeError(`nothing at ${index} of ${list.length}`);
  return found;
}
