// How finely a round solid is cut into flat facets, for a file that is made once and may be printed. mm.

import type { Solid } from '@cairnmark/geometry';

/**
 * How far the facets may lie inside the round surface, mm; null: all faces are flat, and the facets are the faces. Facets are
 * inscribed, so nothing ever lies outside.
 */
export function sagittaMm(solid: Solid): number | null {
  const radiusMm = radiusOf(solid);
  return radiusMm === 0 ? null : Math.max(LEAST_SAGITTA_MM, SAGITTA_OF_RADIUS * radiusMm);
}

/**
 * mm. An eighth of the line that the usual nozzle of a printer lays (0.4 mm; common practice, no source), and what counts as
 * touching.
 */
const LEAST_SAGITTA_MM = 0.05;

/** No unit. A large solid gets no more facets for it: at most 72 on a circle, 100 on one round a ball. */
const SAGITTA_OF_RADIUS = 0.001;

/**
 * Facets on a full circle. A chord over the angle 2 pi / n lies r (1 - cos(pi / n)) inside its circle. Facets of a ball lie
 * inside along and across, which is up to twice as far. A multiple of four, so that it is as wide as the circle both ways.
 */
export function facetsOf(solid: Solid): number {
  const inside = sagittaMm(solid);
  if (inside === null) return FEWEST;
  const ofCircleMm = isBall(solid) ? inside / 2 : inside;
  const share = Math.min(1, ofCircleMm / radiusOf(solid));
  return Math.max(FEWEST, 4 * Math.ceil(Math.PI / Math.acos(1 - share) / 4));
}

/** A small circle still looks round. */
const FEWEST = 24;

/** The largest; 0: nothing about it is round. */
const radiusOf = ({ body }: Solid): number =>
  Math.max(0, ...body.map((part) => (part.kind === 'points' ? 0 : part.radiusMm)));

const isBall = ({ body }: Solid): boolean => body.some(({ kind }) => kind === 'ball' || kind === 'half-ball');
