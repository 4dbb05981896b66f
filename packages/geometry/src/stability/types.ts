// Statics of a stack: stiff bodies that rest on each other with friction. Frame of the table: mm, z up.
// Masses in grams. A push is a sideways share of gravity: (0, 0) is a level table, its length the tangent of the tilt.

import type { Vec2, Vec3 } from '../kernel/vec.ts';

export interface BodyMass {
  readonly massG: number;
  /** Centre of mass in the frame of the table, mm. */
  readonly centre: Vec3;
  /** Radius of gyration, mm: how the body shares a moment between turning and moving. No verdict depends on it. */
  readonly gyrationMm: number;
}

/** Where one body presses on another or on the table: a convex polygon, a segment or a point. */
export interface Patch {
  readonly upper: number;
  readonly lower: number | 'table';
  /** One point, the two ends of a segment, or the corners of a convex polygon in order. */
  readonly points: readonly Vec3[];
  /** The true circle when the corners stand for a whole disc (they lie on it); null for other patches. */
  readonly disc: Disc | null;
  /** Unit normal from the lower to the upper body. */
  readonly normal: Vec3;
  /** Coefficient of friction; no unit. */
  readonly friction: number;
  /** Which of the two bodies touch with a curved surface, so that they can roll. */
  readonly rolling: readonly number[];
}

export interface Disc {
  readonly centre: Vec3;
  readonly radiusMm: number;
}

export interface StaticProblem {
  readonly bodies: readonly BodyMass[];
  readonly patches: readonly Patch[];
  /** A length that is typical of the build, mm: the diagonal of the box around all its pieces. */
  readonly sizeMm: number;
}

/** A sideways push that the build can just bear, and what bears it. */
export interface Margin {
  /** Smallest length of a push at which it no longer holds; the tangent of the tilt. */
  readonly push: number;
  /** Unit vector in plan in which that smallest push acts. */
  readonly direction: Vec2;
}
