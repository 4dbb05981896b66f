// An outline is what a piece covers, seen straight from above: a polygon or a true disc, in mm on the table plane.

import type { Vec2 } from './vec.ts';

/** Corners in order, counter-clockwise seen from above, the last joined to the first; no corner repeated at the end. */
export interface PolygonOutline {
  readonly kind: 'polygon';
  readonly points: readonly Vec2[];
}

export interface DiscOutline {
  readonly kind: 'disc';
  readonly centre: Vec2;
  readonly radiusMm: number;
}

export type Outline = PolygonOutline | DiscOutline;
