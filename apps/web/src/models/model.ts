// Pieces as a scene of three.js that its exporters take: one closed mesh a piece, named by its kind, where it lies in a build.

import type { PlacedPiece, Solid } from '@cairnmark/geometry';
import type { BufferGeometry } from 'three';
import { Matrix4, Mesh, MeshStandardMaterial, Scene } from 'three';
import { surfaceOf } from '../scene/surface.ts';
import { facetsOf } from './facets.ts';

/** One piece: which solid, and from its own frame to that of the table turned by `rotation`, then moved by `shift`, mm. */
export interface ModelPiece extends Pick<PlacedPiece, 'solid' | 'rotation' | 'shift'> {
  /** Its kind. */
  readonly name: string;
  /** As in a style sheet: `#6e9fdd`. */
  readonly colour: string;
}

/** What the numbers of a file count, and which way is up in it. */
export type Frame =
  /** mm, z up: the frame of the table itself. */
  | 'mm-z-up'
  /** m, y up; what faces the viewer of the table faces +z. */
  | 'm-y-up';

/** `name`: of all pieces together. Pieces of one solid share one surface. */
export function modelOf(name: string, pieces: readonly ModelPiece[], frame: Frame): Scene {
  const toFile = FRAMES[frame]();
  const fromFile = toFile.clone().invert();
  const surfaces = new Map<Solid, BufferGeometry>();
  const materials = new Map<string, MeshStandardMaterial>();
  const scene = new Scene();
  scene.name = name;
  for (const { solid, rotation: r, shift, name: kind, colour } of pieces) {
    const surface = surfaces.get(solid) ?? surfaceOf(solid, facetsOf(solid)).applyMatrix4(toFile);
    surfaces.set(solid, surface);
    const material = materials.get(colour) ?? new MeshStandardMaterial({ color: colour });
    materials.set(colour, material);
    const mesh = new Mesh(surface, material);
    mesh.name = kind;
    const placed = new Matrix4(
      ...[r[0], r[1], r[2], shift[0], r[3], r[4], r[5], shift[1]],
      ...[r[6], r[7], r[8], shift[2], 0, 0, 0, 1],
    );
    mesh.matrix = placed.premultiply(toFile).multiply(fromFile);
    mesh.matrixAutoUpdate = false;
    scene.add(mesh);
  }
  scene.updateMatrixWorld(true);
  return scene;
}

/** From the frame of the table to that of the file. */
const FRAMES: Readonly<Record<Frame, () => Matrix4>> = {
  'mm-z-up': () => new Matrix4(),
  'm-y-up': () => new Matrix4(...[M_PER_MM, 0, 0, 0, 0, 0, M_PER_MM, 0], ...[0, -M_PER_MM, 0, 0, 0, 0, 0, 1]),
};

const M_PER_MM = 0.001;
