// Renderer, scene, light and camera of three.js: what draws, and in which direction. mm.

import type { Vec3 } from '@cairnmark/geometry';
import type { Object3D } from 'three';
import { HemisphereLight, OrthographicCamera, Scene, Vector3, WebGLRenderer } from 'three';
import type { View } from '../drawing/view.ts';
import { basisOf, VIEWS } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { CLEAR_MM } from './camera.ts';

export class Stage {
  readonly scene = new Scene();
  readonly #renderer: WebGLRenderer;
  readonly #camera = new OrthographicCamera();
  readonly #sky = new HemisphereLight('white', 'white', (MIDDLE + SPREAD) * Math.PI);

  constructor(canvas: HTMLCanvasElement, parts: readonly Object3D[]) {
    this.#renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    this.#camera.matrixAutoUpdate = false;
    this.#camera.near = 0;
    this.#camera.far = 2 * CLEAR_MM;
    this.#sky.groundColor.setScalar((MIDDLE - SPREAD) / (MIDDLE + SPREAD));
    this.scene.add(...parts, this.#sky);
  }

  draw({ view, pxPerMm, centre, widthPx, heightPx }: Camera): void {
    const { right, up, away } = basisOf(view);
    const [r, u, a] = [new Vector3(...right), new Vector3(...up), new Vector3(...away)];
    this.#camera.left = -widthPx / 2 / pxPerMm;
    this.#camera.right = widthPx / 2 / pxPerMm;
    this.#camera.top = heightPx / 2 / pxPerMm;
    this.#camera.bottom = -heightPx / 2 / pxPerMm;
    this.#camera.updateProjectionMatrix();
    const place = r.clone().multiplyScalar(centre[0]).addScaledVector(u, centre[1]).addScaledVector(a, -CLEAR_MM);
    this.#camera.matrix.makeBasis(r, u, a.clone().negate()).setPosition(place);
    this.#camera.matrixWorldNeedsUpdate = true;
    const [lightX, lightY, lightZ] = towardsLight(view);
    this.#sky.position.set(lightX, lightY, lightZ);
    this.#renderer.render(this.scene, this.#camera);
  }

  resize(widthPx: number, heightPx: number): void {
    this.#renderer.setPixelRatio(Math.min(devicePixelRatio, MOST_PIXEL_RATIO));
    this.#renderer.setSize(widthPx, heightPx, false);
  }

  dispose(): void {
    this.#renderer.dispose();
    // A browser gives out only a few contexts: this one is handed back at once.
    this.#renderer.forceContextLoss();
  }
}

/**
 * The light goes round with the viewer, from the upper left. Who looks level sees faces head on: then it comes as far from
 * the front as it falls on the front faces in the corner view.
 */
function towardsLight({ azimuthRad, elevationRad }: View): Vec3 {
  const { corner } = VIEWS;
  const level = Math.max(0, 1 - elevationRad / corner.elevationRad);
  const angle = azimuthRad + level * corner.azimuthRad;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [LIGHT.right * c - LIGHT.away * s, LIGHT.right * s + LIGHT.away * c, LIGHT.up];
}

/**
 * A surface gets MIDDLE + SPREAD x the cosine of its angle to this direction: light from the whole of one side, so that no
 * face is lost in black. A box in the corner view gets 1.04 on top, 0.95 at the left, 0.36 at the right.
 */
const LIGHT = { right: -0.42, away: -0.045, up: 0.34 } as const;
const MIDDLE = 0.7;
const SPREAD = 0.54;

/** More pixels than this are not seen, and cost. */
const MOST_PIXEL_RATIO = 2;
