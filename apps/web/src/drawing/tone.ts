// How light a surface is drawn: the light comes from the upper left of the one who looks, whatever way they stand.

import type { Vec3 } from '@cairnmark/geometry';
import { dot3 } from '@cairnmark/geometry';
import type { View } from './view.ts';

/** Above 0 the share of white in the colour, below 0 that of black. */
export type Tone = number;

/**
 * The tone of a surface with this outward unit normal (frame of the table). In the corner view the faces of a box come
 * out as 0.17 on top, 0.08 at the left and -0.32 at the right; the rest follows by the same line.
 */
export function toneOf(normal: Vec3, { azimuthRad }: View): Tone {
  const [c, s] = [Math.cos(azimuthRad), Math.sin(azimuthRad)];
  const light: Vec3 = [LIGHT.right * c - LIGHT.away * s, LIGHT.right * s + LIGHT.away * c, LIGHT.up];
  return dot3(normal, light) - SHADE;
}

const LIGHT = { right: -0.28, away: -0.046, up: 0.27 } as const;
const SHADE = 0.1;

/** A colour of the page at that tone, for a style. */
export function mixed(token: string, tone: Tone): string {
  const percent = Math.round((1 - Math.abs(tone)) * 1000) / 10;
  return `color-mix(in oklab, var(${token}) ${percent}%, ${tone < 0 ? 'black' : 'white'})`;
}
