// The flat faces of the pieces that look towards the lens, and which of them a ray meets first.

import type { Point3, TrueCamera } from './camera-of-truth.ts';
import { lensOf, project } from './camera-of-truth.ts';
import type { Colour, Scene } from './scene.ts';

export interface Face {
  readonly corners: readonly Point3[];
  readonly normal: Point3;
  /** Of the plane: normal . point. */
  readonly offset: number;
  readonly colour: Colour;
  /** Pixels that may show it: left, right, top, bottom. */
  readonly box: readonly [number, number, number, number];
}

export function facesOf({ pieces }: Scene, camera: TrueCamera): readonly Face[] {
  const lens = lensOf(camera);
  return pieces.flatMap(({ placed, colour }) =>
    placed.flatFaces.flatMap((face): Face[] => {
      if (face.kind !== 'polygon') throw new RangeError('only pieces with flat faces are drawn');
      const { corners, normal } = face;
      const offset = dot(normal, corners[0]!);
      if (dot(normal, lens) <= offset) return [];
      const shade = 0.5 + 0.5 * Math.max(0, dot(normal, LIGHT));
      const shown = corners.map((corner) => project(camera, corner));
      const [us, vs] = [shown.map(([u]) => u), shown.map(([, v]) => v)];
      return [
        {
          corners,
          normal,
          offset,
          colour: [colour[0] * shade, colour[1] * shade, colour[2] * shade],
          box: [Math.min(...us) - 3, Math.max(...us) + 3, Math.min(...vs) - 3, Math.max(...vs) + 3],
        },
      ];
    }),
  );
}

/** From the upper left behind the viewer, of length 1. */
const LIGHT: Point3 = [-0.3, -0.35, 0.887411967464942];

export function nearestFace(faces: readonly Face[], x: number, y: number, lens: Point3, ray: Point3): Colour | null {
  let [nearest, colour]: [number, Colour | null] = [Number.POSITIVE_INFINITY, null];
  for (const face of faces) {
    const { box, normal, offset, corners } = face;
    if (x < box[0] || x > box[1] || y < box[2] || y > box[3]) continue;
    const way = (offset - dot(normal, lens)) / dot(normal, ray);
    if (!(way > 0 && way < nearest)) continue;
    const at: Point3 = [lens[0] + way * ray[0], lens[1] + way * ray[1], lens[2] + way * ray[2]];
    if (!inside(corners, normal, at)) continue;
    [nearest, colour] = [way, face.colour];
  }
  return colour;
}

const dot = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Corners run counter-clockwise about the normal. */
function inside(corners: readonly Point3[], normal: Point3, [x, y, z]: Point3): boolean {
  for (let k = 0; k < corners.length; k += 1) {
    const [a, b] = [corners[k]!, corners[(k + 1) % corners.length]!];
    const [ex, ey, ez] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const [px, py, pz] = [x - a[0], y - a[1], z - a[2]];
    const side = normal[0] * (ey * pz - ez * py) + normal[1] * (ez * px - ex * pz) + normal[2] * (ex * py - ey * px);
    if (side < 0) return false;
  }
  return true;
}
