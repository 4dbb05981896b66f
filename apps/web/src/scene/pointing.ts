// What lies under a pointer, and where it leads what it drags. Places are clientX and clientY, lengths mm.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import type { Aim } from './aim.ts';
import type { Picked } from './pick.ts';
import { pickAlong } from './pick.ts';
import type { PieceModels } from './piece-models.ts';

export class Pointing {
  readonly #canvas: HTMLCanvasElement;
  readonly #aim: Aim;
  readonly #models: PieceModels;

  constructor(canvas: HTMLCanvasElement, aim: Aim, models: PieceModels) {
    this.#canvas = canvas;
    this.#aim = aim;
    this.#models = models;
  }

  /** True where one looks level at the build, so that nothing shows how far away a place is. */
  get isLevel(): boolean {
    return this.#aim.isLevel;
  }

  /** The place on the canvas that is nearest to one on the page, and whether it is the same. */
  nearest(clientX: number, clientY: number): { readonly place: Vec2; readonly isInside: boolean } {
    const { left, top, right, bottom } = this.#canvas.getBoundingClientRect();
    const place = [Math.min(right, Math.max(left, clientX)), Math.min(bottom, Math.max(top, clientY))] as const;
    return { place, isInside: place[0] === clientX && place[1] === clientY };
  }

  /** The nearest surface, or the table, which has no end here; null where one looks level past everything. */
  pick(clientX: number, clientY: number): Picked | null {
    const ray = this.#aim.ray(this.#onCanvas(clientX, clientY));
    return ray === null ? null : pickAlong(ray, this.#models.surfaces());
  }

  /** Where a point of a piece comes to lie when it is dragged to a place: at its height, or across where one looks level. */
  dragPlanePoint(clientX: number, clientY: number, through: Vec3): Vec3 {
    return this.#aim.dragPoint(this.#onCanvas(clientX, clientY), through);
  }

  #onCanvas(clientX: number, clientY: number): Vec2 {
    const { left, top } = this.#canvas.getBoundingClientRect();
    return [clientX - left, clientY - top];
  }
}
