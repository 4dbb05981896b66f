// Lines of a width in px, from points in mm.

import type { Vec3 } from '@cairnmark/geometry';
import type { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';

export type Segment3 = readonly [from: Vec3, to: Vec3];

export function fatLines(segments: readonly Segment3[], material: LineMaterial): LineSegments2 {
  return linesOf(geometryOf(segments), material);
}

/** Lines of a geometry that several pieces share. */
export function linesOf(geometry: LineSegmentsGeometry, material: LineMaterial): LineSegments2 {
  const lines = new LineSegments2(geometry, material);
  lines.computeLineDistances();
  lines.frustumCulled = false;
  lines.raycast = () => {};
  return lines;
}

/** The same object with other lines. */
export function redraw(lines: LineSegments2, segments: readonly Segment3[]): void {
  lines.geometry.dispose();
  lines.geometry = geometryOf(segments);
  lines.computeLineDistances();
  lines.visible = segments.length > 0;
}

/** The sides of a ring, one after another. */
export const ringSegments = (ring: readonly Vec3[]): readonly Segment3[] =>
  ring.map((from, k): Segment3 => [from, ring[(k + 1) % ring.length] ?? from]);

export function geometryOf(segments: readonly Segment3[]): LineSegmentsGeometry {
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions(segments.flatMap(([from, to]) => [...from, ...to]));
  return geometry;
}
