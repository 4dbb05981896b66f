// The patches that hold up pieces which fall, in boxwood on top of what carries them. mm, frame of the table.

import type { Vec3 } from '@cairnmark/geometry';
import { BufferAttribute, BufferGeometry, Group, Mesh } from 'three';
import { fatLines, ringSegments } from './fat-lines.ts';
import type { Materials } from './materials.ts';
import type { StabilityOverlay } from './overlay-of.ts';
import { ORDER } from './piece-model.ts';

export class HeldUp {
  readonly group = new Group();
  readonly #materials: Materials;

  constructor(materials: Materials) {
    this.#materials = materials;
  }

  show(overlay: StabilityOverlay | null): void {
    this.dispose();
    // Where nothing falls the pieces cover it.
    if (overlay === null || !overlay.falls) return;
    for (const patch of overlay.marks.flatMap(({ heldUp }) => heldUp)) this.#draw(patch);
  }

  dispose(): void {
    for (const part of this.group.children) if ('geometry' in part) (part as Mesh).geometry.dispose();
    this.group.clear();
  }

  #draw(patch: readonly Vec3[]): void {
    const rim = fatLines(ringSegments(patch), this.#materials.heldUpRim);
    rim.renderOrder = ORDER.heldUp + 1;
    this.group.add(rim);
    if (patch.length < 3) return;
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(patch.flat()), 3));
    geometry.setIndex(patch.slice(2).flatMap((_, k) => [0, k + 1, k + 2]));
    const face = new Mesh(geometry, this.#materials.heldUp);
    face.renderOrder = ORDER.heldUp;
    this.group.add(face);
  }
}
