// The build in three dimensions on a canvas, with marks and texts over it. It shows pictures that are plain data, and draws
// only when something changed.

import { sheetUnder } from '../drawing/sheet.ts';
import type { ViewName } from '../drawing/view.ts';
import { Aim } from './aim.ts';
import type { Camera } from './camera.ts';
import type { Inset } from './fit.ts';
import { HeldUp } from './held-up.ts';
import { Materials } from './materials.ts';
import type { Drop } from './motion.ts';
import { dropMm, isOver, wantsLessMotion } from './motion.ts';
import { OverlayLayer } from './overlay-layer.ts';
import { Paper } from './paper.ts';
import type { ScenePicture } from './picture.ts';
import { PieceModels } from './piece-models.ts';
import { Pointing } from './pointing.ts';
import type { Room } from './room.ts';
import { roomOf } from './room.ts';
import './scene.css';
import { Stage } from './stage.ts';
import { themeOf } from './theme.ts';
import { writeMarks } from './write-marks.ts';

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
  readonly #aim = new Aim();
  readonly pointing = new Pointing(this.#canvas, this.#aim, this.#models);
  readonly #ends = new AbortController();
  readonly #sizes: ResizeObserver;
  #picture: ScenePicture = EMPTY;
  #room: Room = roomOf([]);
  #drop: Drop | null = null;
  #frame: number | null = null;

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
    this.#aim.view = view;
    this.#aimAnew();
  }

  /** Keeps the build clear of what lies over the sides of the canvas, px. */
  setInset(inset: Inset): void {
    this.#aim.inset = inset;
    this.#aimAnew();
  }

  dispose(): void {
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#ends.abort();
    this.#sizes.disconnect();
    const parts = [this.#models, this.#paper, this.#heldUp, this.#materials, this.#layer, this.#stage];
    for (const part of parts) part.dispose();
    this.#canvas.remove();
  }

  #repaint(): void {
    this.#materials.paint(themeOf(this.#canvas));
    this.#ask();
  }

  #resize(): void {
    const { clientWidth, clientHeight } = this.#canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#stage.resize(clientWidth, clientHeight);
    this.#aim.forget();
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
    this.#aim.turn({ widthPx, heightPx, room: this.#room, unit, heightLabelPx }, performance.now());
    this.#ask();
  }

  #ask(): void {
    this.#frame ??= requestAnimationFrame((nowMs) => this.#drawNow(nowMs));
  }

  #drawNow(nowMs: number): void {
    this.#frame = null;
    const camera = this.#aim.at(nowMs);
    if (camera === null) return;
    if (this.#drop !== null) {
      this.#models.lift(this.#drop.piece, dropMm(this.#drop, nowMs));
      if (isOver(this.#drop, nowMs)) this.#drop = null;
    }
    this.#draw(camera);
    const { isTurning } = this.#aim;
    writeMarks(this.#layer, this.#picture, { camera, room: this.#room, frame: this.#aim.frame(camera), isTurning });
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
}

const EMPTY: ScenePicture = { pieces: [], picked: null, ghost: null, why: null, unit: 'cm', heightText: null };
