// The build in three dimensions on a canvas, with marks and texts over it. It shows pictures that are plain data, tells what
// lies under a pointer, and draws only when something changed. Places are clientX and clientY, lengths mm.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import { sheetUnder } from '../drawing/sheet.ts';
import type { ViewName } from '../drawing/view.ts';
import { VIEWS } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { dragPoint, rayThrough } from './camera.ts';
import type { Inset, Room } from './fit.ts';
import { clearOf, fitCamera, roomOf } from './fit.ts';
import { HeldUp } from './held-up.ts';
import { Materials } from './materials.ts';
import type { Drop, Way } from './motion.ts';
import { dropMm, isOver, onTheWay, wantsLessMotion, wayTo } from './motion.ts';
import { OverlayLayer } from './overlay-layer.ts';
import { Paper } from './paper.ts';
import type { Picked } from './pick.ts';
import { pickAlong } from './pick.ts';
import type { ScenePicture } from './picture.ts';
import { PieceModels } from './piece-models.ts';
import { boxesToAvoid, marksOf, namedOf } from './scene-marks.ts';
import './scene.css';
import { Stage } from './stage.ts';
import { themeOf } from './theme.ts';

export interface SceneHandlers {
  /** False when the browser took the drawing away, true when it gave it back. */
  readonly onDrawing: (isThere: boolean) => void;
}

export class SceneView {
  readonly #canvas = document.createElement('canvas');
  readonly #materials = new Materials();
  readonly #models = new PieceModels(this.#materials);
  readonly #paper = new Paper(this.#materials);
  readonly #heldUp = new HeldUp(this.#materials);
  readonly #stage: Stage;
  readonly #layer: OverlayLayer;
  readonly #ends = new AbortController();
  readonly #sizes: ResizeObserver;
  #picture: ScenePicture = EMPTY;
  #view: ViewName = 'corner';
  #inset: Inset = NO_INSET;
  #room: Room = roomOf([]);
  /** The camera, and where it goes; null before the canvas has a size. */
  #way: Way | null = null;
  #drop: Drop | null = null;
  #frame: number | null = null;

  /** False where the browser draws nothing in three dimensions: show another way to build instead. */
  static supported(): boolean {
    const context = document.createElement('canvas').getContext('webgl2');
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  }

  /** Fills `host`, which is positioned; buttons that it holds stay on top. */
  constructor(host: HTMLElement, { onDrawing }: SceneHandlers) {
    this.#canvas.className = 'scene-canvas';
    this.#layer = new OverlayLayer(host);
    host.prepend(this.#canvas);
    this.#stage = new Stage(this.#canvas, [this.#paper.group, this.#models.group, this.#heldUp.group]);
    this.#materials.paint(themeOf(this.#canvas));
    const { signal } = this.#ends;
    const listen = (name: string, then: () => void): void => this.#canvas.addEventListener(name, then, { signal });
    listen('webglcontextlost', () => onDrawing(false));
    listen('webglcontextrestored', () => {
      onDrawing(true);
      this.#ask();
    });
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => this.#repaint(), { signal });
    this.#sizes = new ResizeObserver(() => this.#resize());
    this.#sizes.observe(this.#canvas);
  }

  /** Shows a picture; `dropped` is the index of the one piece that falls into its place. */
  show(picture: ScenePicture, dropped: number | null = null): void {
    this.#picture = picture;
    this.#room = roomOf(picture.pieces.map(({ body }) => body));
    this.#models.show(picture);
    this.#heldUp.show(picture.why?.overlay ?? null);
    const isStill = dropped === null || wantsLessMotion();
    this.#drop = isStill ? null : { piece: dropped, sinceMs: performance.now() };
    this.#aimAnew();
  }

  setView(view: ViewName): void {
    this.#view = view;
    this.#aimAnew();
  }

  /** Keeps the build clear of what lies over the sides of the canvas, px. */
  setInset(inset: Inset): void {
    this.#inset = inset;
    this.#aimAnew();
  }

  /** The nearest surface under a place, or the table, which has no end here; null where one looks level past everything. Pieces in `except` are looked through. */
  pick(clientX: number, clientY: number, except: ReadonlySet<number> = NONE): Picked | null {
    if (this.#way === null) return null;
    return pickAlong(rayThrough(this.#way.camera, this.#onCanvas(clientX, clientY)), this.#models.surfaces(except));
  }

  /** Where a point of a piece comes to lie when it is dragged to a place: at its height, or across where one looks level. */
  dragPlanePoint(clientX: number, clientY: number, through: Vec3): Vec3 {
    return this.#way === null ? through : dragPoint(this.#way.camera, this.#onCanvas(clientX, clientY), through);
  }

  dispose(): void {
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#ends.abort();
    this.#sizes.disconnect();
    const parts = [this.#models, this.#paper, this.#heldUp, this.#materials, this.#layer, this.#stage];
    for (const part of parts) part.dispose();
    this.#canvas.remove();
  }

  #onCanvas(clientX: number, clientY: number): Vec2 {
    const { left, top } = this.#canvas.getBoundingClientRect();
    return [clientX - left, clientY - top];
  }

  #repaint(): void {
    this.#materials.paint(themeOf(this.#canvas));
    this.#ask();
  }

  #resize(): void {
    const { clientWidth, clientHeight } = this.#canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#stage.resize(clientWidth, clientHeight);
    this.#way = null;
    this.#aimAnew();
    // A canvas that changed its size is empty until it is drawn: at once, so that nothing flickers.
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#drawNow(performance.now());
  }

  /** Turns the camera to where the view and the build want it; at once when there was none. */
  #aimAnew(): void {
    const { clientWidth: widthPx, clientHeight: heightPx } = this.#canvas;
    if (widthPx === 0 || heightPx === 0) return;
    const { unit, heightText } = this.#picture;
    const heightLabelPx = this.#layer.measureHeight(heightText);
    const place = { widthPx, heightPx, inset: this.#inset, room: this.#room, unit, heightLabelPx };
    const from = wantsLessMotion() ? null : this.#way;
    this.#way = wayTo(fitCamera({ view: VIEWS[this.#view], ...place }), from, performance.now());
    this.#ask();
  }

  #ask(): void {
    this.#frame ??= requestAnimationFrame((nowMs) => this.#drawNow(nowMs));
  }

  #drawNow(nowMs: number): void {
    this.#frame = null;
    if (this.#way === null) return;
    this.#way = onTheWay(this.#way, nowMs);
    if (this.#drop !== null) {
      this.#models.lift(this.#drop.piece, dropMm(this.#drop, nowMs));
      if (isOver(this.#drop, nowMs)) this.#drop = null;
    }
    this.#draw(this.#way.camera);
    const isTurning = this.#way.to !== null;
    this.#write(this.#way.camera, isTurning);
    if (isTurning || this.#drop !== null) this.#ask();
  }

  #draw(camera: Camera): void {
    const { pieces, unit } = this.#picture;
    const { ground, heightMm } = this.#room;
    // Here and not when it is shown: while a piece is dragged, only what comes to be seen is worked out.
    this.#paper.show(pieces, { sheet: sheetUnder(ground, unit), heightMm, unit });
    this.#paper.aim(camera.view);
    this.#materials.aim(camera);
    this.#models.aim(camera.view);
    this.#stage.draw(camera);
  }

  /** While the view turns, the texts that name marks are away: they would jump about. */
  #write(camera: Camera, isTurning: boolean): void {
    const { marks, heightAt, rulerBox } = marksOf(this.#picture, camera, this.#room);
    const heightBox = this.#layer.placeHeight(heightAt);
    const named = isTurning ? [] : namedOf(this.#picture, camera);
    const avoid = named.length === 0 ? [] : boxesToAvoid(this.#picture, camera, [rulerBox, heightBox]);
    this.#layer.draw(marks, named, avoid, clearOf(this.#inset, camera));
  }
}

const NONE: ReadonlySet<number> = new Set();
const NO_INSET: Inset = { top: 0, right: 0, bottom: 0, left: 0 };
const EMPTY: ScenePicture = { pieces: [], picked: null, ghost: null, why: null, unit: 'cm', heightText: null };
