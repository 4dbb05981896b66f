// Pieces as a scene of three.js that its exporters take: one closed mesh a piece, named by its kind, where it lies in a build.

import type { PlacedPiece, Solid } from '@cairnmark/geometry';
import type { BufferGeometry } from 'three';
import { Matrix4, Mesh, MeshStandardMaterial, Scene, Vector3 } from 'three';
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
  const { turn, perMm } = FRAMES[frame]();
  const surfaces = new Map<Solid, BufferGeometry>();
  const materials = new Map<string, MeshStandardMaterial>();
  const scene = new Scene();
  scene.name = name;
  for (const { solid, rotation: r, shift, name: kind, colour } of pieces) {
    const surface =
      surfaces.get(solid) ?? surfaceOf(solid, facetsOf(solid)).applyMatrix4(turn).scale(perMm, perMm, perMm);
    surfaces.set(solid, surface);
    const material = materials.get(colour) ?? new MeshStandardMaterial({ color: colour });
    materials.set(colour, material);
    const mesh = new Mesh(surface, material);
    mesh.name = kind;
    const turned = new Matrix4(...[r[0], r[1], r[2], 0, r[3], r[4], r[5], 0], ...[r[6], r[7], r[8], 0, 0, 0, 0, 1]);
    mesh.matrix = turned.premultiply(turn).multiply(turn.clone().transpose());
    mesh.matrix.setPosition(new Vector3(...shift).applyMatrix4(turn).multiplyScalar(perMm));
    mesh.matrixAutoUpdate = false;
    scene.add(mesh);
  }
  scene.updateMatrixWorld(true);
  return scene;
}

/** From the frame of the table to that of the file: a quarter turn or none, in whole numbers, and then the unit. */
const FRAMES: Readonly<Record<Frame, () => { readonly turn: Matrix4; readonly perMm: number }>> = {
  'mm-z-up': () => ({ turn: new Matrix4(), perMm: 1 }),
  'm-y-up': () => ({ turn: new Matrix4(...[1, 0, 0, 0, 0, 0, 1, 0], ...[0, -1, 0, 0, 0, 0, 0, 1]), perMm: 0.001 }),
};
