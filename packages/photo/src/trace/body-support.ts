// Along which share of the edges of a whole piece, not of its outline alone, the photo shows an edge. An outline may look the same in two
// places or two ways round (a prism on its side, a quarter turned); the other edges of the piece then do not.

import type { PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import { dot3, length3, sub3 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, positionOf } from '../camera/camera.ts';
import { colourSteps } from '../image/colour-step.ts';
import type { Photo } from '../image/photo.ts';
import { BODY_SAMPLES, LEAST_COLOUR_STEP, ON_EDGE_PX, SAME_CORNER_MM } from '../tolerance.ts';

/** 0 to 1, over the edges of the flat faces that look towards the lens; null for a piece that has none. */
export function bodySupport(photo: Photo, camera: Camera, piece: PlacedPiece): number | null {
  const edges = edgesSeen(camera, piece);
  let [on, all] = [0, 0];
  for (const [from, to] of edges) {
    const [a, b] = [imagePoint(camera, from), imagePoint(camera, to)];
    if (a === null || b === null) continue;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (!(length > 0)) continue;
    const across: Vec2 = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    for (let k = 0; k < BODY_SAMPLES; k += 1) {
      const share = (k + 1) / (BODY_SAMPLES + 1);
      const at: Vec2 = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
      all += length;
      if (colourSteps(photo, at, across, ON_EDGE_PX, LEAST_COLOUR_STEP, 1).length > 0) on += length;
    }
  }
  return all > 0 ? on / all : null;
}

/** Each edge once, though two faces share it. */
function edgesSeen(camera: Camera, { flatFaces }: PlacedPiece): readonly (readonly [Vec3, Vec3])[] {
  const lens = positionOf(camera);
  const edges: (readonly [Vec3, Vec3])[] = [];
  for (const face of flatFaces) {
    if (face.kind !== 'polygon') continue;
    const [first] = face.corners;
    if (first === undefined || dot3(face.normal, sub3(lens, first)) <= 0) continue;
    for (const [k, from] of face.corners.entries()) {
      const to = face.corners[(k + 1) % face.corners.length] ?? from;
      // A neighbour runs along a shared edge the other way.
      if (!edges.some(([a, b]) => near(a, to) && near(b, from))) edges.push([from, to]);
    }
  }
  return edges;
}

const near = (a: Vec3, b: Vec3): boolean => length3(sub3(a, b)) <= SAME_CORNER_MM;
