// Which way the scene is looked at: the view that was asked for, what has to be in sight, and the camera on its way there.
// Places are px from the upper left corner of the canvas, lengths mm.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import type { ViewName } from '../drawing/view.ts';
import { VIEWS } from '../drawing/view.ts';
import type { Camera, Ray } from './camera.ts';
import { dragPoint, isLevel, rayThrough } from './camera.ts';
import type { FitRequest, Inset } from './fit.ts';
import { clearOf, fitCamera } from './fit.ts';
import type { Box } from './label-layout.ts';
import type { Way } from './motion.ts';
import { onTheWay, wantsLessMotion, wayTo } from './motion.ts';

export class Aim {
  view: ViewName = 'corner';
  /** What lies over the sides of the canvas. */
  inset: Inset = NO_INSET;
  /** null before the canvas has a size. */
  #way: Way | null = null;

  /** Turns to where the view and the build want it; at once when there was no camera, or motion is not wanted. */
  turn(seen: Omit<FitRequest, 'view' | 'inset'>, nowMs: number): void {
    const from = wantsLessMotion() ? null : this.#way;
    this.#way = wayTo(fitCamera({ ...seen, view: VIEWS[this.view], inset: this.inset }), from, nowMs);
  }

  /** The next turn is at once. */
  forget(): void {
    this.#way = null;
  }

  /** The camera at this moment; null before the canvas has a size. */
  at(nowMs: number): Camera | null {
    if (this.#way !== null) this.#way = onTheWay(this.#way, nowMs);
    return this.#way?.camera ?? null;
  }

  get isTurning(): boolean {
    return this.#way !== null && this.#way.to !== null;
  }

  /** True where one looks level at the build, so that nothing shows how far away a place is. */
  get isLevel(): boolean {
    return isLevel(VIEWS[this.view]);
  }

  ray(place: Vec2): Ray | null {
    return this.#way === null ? null : rayThrough(this.#way.camera, place);
  }

  dragPoint(place: Vec2, through: Vec3): Vec3 {
    return this.#way === null ? through : dragPoint(this.#way.camera, place, through);
  }

  /** The part of the canvas that nothing lies over. */
  frame(camera: Camera): Box {
    return clearOf(this.inset, camera);
  }
}

const NO_INSET: Inset = { top: 0, right: 0, bottom: 0, left: 0 };
