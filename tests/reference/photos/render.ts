// A photograph of a scene by casting rays: plain, slow, and written apart from the package. Light is mixed as a lens and a sensor mix it,
// over four rays a pixel and a blur, and only then put on the scale of sRGB (IEC 61966-2-1).

import type { Photo } from '@cairnmark/photo';
import { diceOf } from '../dice.ts';
import type { TrueCamera } from './camera-of-truth.ts';
import { lensOf, project } from './camera-of-truth.ts';
import type { Face } from './faces.ts';
import { facesOf, nearestFace } from './faces.ts';
import type { Colour, Scene, Shot } from './scene.ts';
import { sheetLight } from './sheet-light.ts';

export function render(scene: Scene, shot: Shot, seed: number): Photo {
  const { width, height } = shot;
  const box = boxOf(scene, shot.camera, facesOf(scene, shot.camera));
  const light = blurred(castRays(scene, shot, box), width, height, shot.blurPx, box);
  const { between } = diceOf(seed);
  // Three draws less their mean, doubled, have deviation 1. A prime number of them, so that rows do not repeat.
  const grains = Float32Array.from({ length: 49_999 }, () => 2 * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5));
  const scale = Float32Array.from({ length: 4097 }, (_, k) => 255 * encoded(k / 4096));
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let k = 0; k < width * height; k += 1) {
    const grain = shot.noise * grains[k % grains.length]!;
    for (let c = 0; c < 3; c += 1) data[4 * k + c] = scale[Math.round(4096 * Math.min(1, light[3 * k + c]!))]! + grain;
  }
  return { width, height, data };
}

const encoded = (share: number): number => (share <= 0.0031308 ? 12.92 * share : 1.055 * share ** (1 / 2.4) - 0.055);

function castRays(scene: Scene, { width, height, camera }: Shot, box: Face['box']): Float32Array {
  const { f, cx, cy, k1, R } = camera;
  const lens = lensOf(camera);
  const faces = facesOf(scene, camera);
  const [left, right, top, bottom] = box;
  const light = new Float32Array(3 * width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      // Four rays a pixel where sheet and pieces are, one on the bare table.
      const rays = x >= left && x <= right && y >= top && y <= bottom ? 4 : 1;
      for (let sub = 0; sub < rays; sub += 1) {
        const u = (x + (rays === 1 ? 0.5 : 0.25 + 0.5 * (sub % 2)) - cx) / f;
        const v = (y + (rays === 1 ? 0.5 : 0.25 + 0.5 * (sub >> 1)) - cy) / f;
        // r (1 + k1 r^2) = seen, by a fixed number of Newton's steps.
        const seen = Math.hypot(u, v);
        let r = seen;
        for (let k = 0; k < 4; k += 1) r -= (r * (1 + k1 * r * r) - seen) / (1 + 3 * k1 * r * r);
        const share = seen > 0 ? r / seen : 1;
        const [a, b] = [u * share, v * share];
        const dx = R[0]! * a + R[3]! * b + R[6]!;
        const dy = R[1]! * a + R[4]! * b + R[7]!;
        const dz = R[2]! * a + R[5]! * b + R[8]!;
        const colour = nearestFace(faces, x, y, lens, [dx, dy, dz]) ?? groundColour(scene, lens, [dx, dy, dz]);
        const at = 3 * (y * width + x);
        light[at] = light[at]! + colour[0] / rays;
        light[at + 1] = light[at + 1]! + colour[1] / rays;
        light[at + 2] = light[at + 2]! + colour[2] / rays;
      }
    }
  }
  return light;
}

/** Pixels that may show sheet or pieces. */
function boxOf({ pages }: Scene, camera: TrueCamera, faces: readonly Face[]): Face['box'] {
  const corners = pages.flatMap(({ middleMm: [x, y] }) =>
    [-1, 1].flatMap((i) => [-1, 1].map((j) => project(camera, [x + 155 * i, y + 115 * j, 0]))),
  );
  const [us, vs] = [corners.map(([u]) => u), corners.map(([, v]) => v)];
  return [
    Math.min(...us, ...faces.map(({ box }) => box[0])),
    Math.max(...us, ...faces.map(({ box }) => box[1])),
    Math.min(...vs, ...faces.map(({ box }) => box[2])),
    Math.max(...vs, ...faces.map(({ box }) => box[3])),
  ];
}

const SKY: Colour = [0.5, 0.52, 0.55];

function groundColour(scene: Scene, lens: readonly number[], [dx, dy, dz]: readonly [number, number, number]): Colour {
  if (dz >= 0) return SKY;
  const way = -lens[2]! / dz;
  const [x, y] = [lens[0]! + way * dx, lens[1]! + way * dy];
  const paper = sheetLight(scene, x, y);
  if (paper !== null) return [paper, paper, paper];
  // Stripes like wood, wavy and uneven.
  const stripe = 1 + 0.25 * Math.sin(x / 9 + 2 * Math.sin(y / 140)) + 0.1 * Math.sin(x / 3.1);
  const [r, g, b] = scene.table;
  return [r * stripe, g * stripe, b * stripe];
}

/** Gauss, along rows and then along columns; the bare table outside `box` stays as it is. */
function blurred(light: Float32Array, width: number, height: number, sigma: number, box: Face['box']): Float32Array {
  const reach = Math.ceil(2.5 * sigma);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, k) => Math.exp(-(((k - reach) / sigma) ** 2) / 2));
  const whole = bell.reduce((sum, weight) => sum + weight, 0);
  const weights = Float32Array.from(bell, (weight) => weight / whole);
  const [left, right] = [Math.max(reach, Math.floor(box[0])), Math.min(width - reach, Math.ceil(box[1]))];
  const [top, bottom] = [Math.max(reach, Math.floor(box[2])), Math.min(height - reach, Math.ceil(box[3]))];
  const pass = (from: Float32Array, step: number): Float32Array => {
    const to = from.slice();
    for (let y = top; y < bottom; y += 1) {
      for (let at = 3 * (y * width + left); at < 3 * (y * width + right); at += 1) {
        let sum = 0;
        for (let d = -reach; d <= reach; d += 1) sum += weights[d + reach]! * from[at + d * step]!;
        to[at] = sum;
      }
    }
    return to;
  };
  return pass(pass(light, 3), 3 * width);
}
