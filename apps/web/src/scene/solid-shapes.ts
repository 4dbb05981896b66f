// The surface and the true edges of a solid for drawing and picking, in its own frame, made once for each solid and size. mm.

import type { Solid, Vec3 } from '@cairnmark/geometry';
import { rimOf } from '@cairnmark/geometry';
import type { BufferGeometry } from 'three';
import type { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import { computeBoundsTree } from 'three-mesh-bvh';
import type { Segment3 } from './fat-lines.ts';
import { geometryOf, ringSegments } from './fat-lines.ts';
import { surfaceOf } from './surface.ts';

export interface SolidShape {
  readonly surface: BufferGeometry;
  readonly edges: LineSegmentsGeometry;
  readonly hasEdges: boolean;
}

export class SolidShapes {
  readonly #made = new Map<string, SolidShape>();

  of(solid: Solid): SolidShape {
    const key = `${solid.id} ${JSON.stringify(solid.sizes)}`;
    const shape = this.#made.get(key) ?? shapeOf(solid);
    this.#made.set(key, shape);
    return shape;
  }

  dispose(): void {
    for (const { surface, edges } of this.#made.values()) {
      surface.dispose();
      edges.dispose();
    }
  }
}

/** Facets on a full circle: they lie less than a tenth of a pixel inside the outline that is drawn over them. */
const FACETS = 64;

function shapeOf(solid: Solid): SolidShape {
  const edges = edgesOf(solid);
  const surface = surfaceOf(solid, FACETS);
  surface.boundsTree = computeBoundsTree.call(surface);
  return { surface, edges: geometryOf(edges), hasEdges: edges.length > 0 };
}

/** Each edge once; the rims of discs as polygons. */
function edgesOf({ flatFaces }: Solid): readonly Segment3[] {
  const found = new Map<string, Segment3>();
  for (const face of flatFaces) {
    for (const segment of ringSegments(rimOf(face))) {
      const ends = segment.map(nameOf).sort();
      found.set(ends.join(' '), segment);
    }
  }
  return [...found.values()];
}

/** Corners that two faces share may differ by rounding. */
const nameOf = (point: Vec3): string => point.map((value) => Math.round(value * 1e6)).join(',');
