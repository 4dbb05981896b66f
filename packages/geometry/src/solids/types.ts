// What the catalogue says of a solid. Own frame: mm, z up, the solid stands on z = 0 on its base, and the upright line
// through its centre of mass (as a full solid) is x = y = 0.

import type { Quantity, Step } from '../kernel/formula.ts';
import type { Outline } from '../kernel/outline.ts';
import type { Issue, Result } from '../kernel/result.ts';
import type { Rotation } from '../kernel/rotation.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body } from './body.ts';

export type SolidId =
  | 'cube'
  | 'rectangular-prism'
  | 'triangular-prism'
  | 'regular-prism'
  | 'rectangular-pyramid'
  | 'regular-pyramid'
  | 'rectangular-frustum'
  | 'regular-frustum'
  | 'tetrahedron'
  | 'octahedron'
  | 'dodecahedron'
  | 'icosahedron'
  | 'antiprism'
  | 'cuboctahedron'
  | 'cylinder'
  | 'cone'
  | 'cone-frustum'
  | 'sphere'
  | 'hemisphere';

/**
 * Sizes as written in a kit: mm, except `sides` (a count). A size may be given the way pupils measure it: `diameter` or
 * `circumference` in place of `radius`, `slant` in place of `height`. Over a rectangle there are two slants:
 * `slantLength` runs up the faces that stand on the length, `slantWidth` up those on the width. `slantEdge` runs along an
 * edge from a corner of the base.
 */
export type Sizes = Readonly<Record<string, number>>;

/** A solid as a kit names it. */
export interface SolidSpec {
  readonly solid: SolidId;
  readonly sizes: Sizes;
}

/** Five whole numbers and the apex; every school's way of counting is a sum of them. */
export interface Counts {
  readonly flatFaces: number;
  readonly curvedSurfaces: number;
  readonly straightEdges: number;
  readonly curvedEdges: number;
  /** Corners where straight edges meet; the tip of a cone is not among them. */
  readonly vertices: number;
  /** 1 for the tip of a cone, else 0. The tip of a pyramid is a vertex like any other. */
  readonly apexes: number;
}

/** A flat face in space. `normal` is the outward unit normal; corners run counter-clockwise seen from outside. */
export type FlatFace =
  | { readonly kind: 'polygon'; readonly normal: Vec3; readonly corners: readonly Vec3[] }
  | { readonly kind: 'disc'; readonly normal: Vec3; readonly centre: Vec3; readonly radiusMm: number };

/** A curved surface, and the flat figure that paper for it is cut from ('none': a ball cannot be cut from flat paper). */
export interface CurvedSurface {
  readonly net: 'rectangle' | 'sector' | 'ring-sector' | 'none';
  readonly areaMm2: number;
}

/** Centres of mass in the own frame, mm. */
export interface Centroids {
  readonly full: Vec3;
  /** A uniform sheet over the whole surface. */
  readonly closedShell: Vec3;
  /**
   * The same without the base; null for a solid that has no base of its own to leave open: ball, cuboctahedron,
   * octahedron, dodecahedron, icosahedron.
   */
  readonly openShell: Vec3 | null;
}

/** One way to put the solid down. `rotation` turns the own frame so that this side is lowest. */
export interface Resting {
  /** Stable name, for instance "base", "top", "side", "flat", "dome", "long-side". */
  readonly id: string;
  readonly rotation: Rotation;
  readonly heightMm: number;
  /** Seen from above, about the upright line through the full centre of mass, before any turn. */
  readonly outline: Outline;
  /** What touches the table: a flat face, a line or a single point. */
  readonly contact: 'face' | 'line' | 'point';
}

export interface Solid {
  readonly id: SolidId;
  /** The sizes in the solid's own terms (`radius`, `height`, `edge` ...), whatever way they were given. */
  readonly sizes: Sizes;
  readonly volumeMm3: number;
  readonly surfaceMm2: number;
  /** Surface less base (and less the top where there is one); null where the trade has no such word for the solid. */
  readonly lateralMm2: number | null;
  /** Up the middle of a side; null where there is none, and over a rectangle that has two different ones. */
  readonly slantMm: number | null;
  readonly counts: Counts;
  readonly centroids: Centroids;
  readonly body: Body;
  readonly flatFaces: readonly FlatFace[];
  readonly curvedSurfaces: readonly CurvedSurface[];
  /** At least one; the first is the usual way up. */
  readonly restings: readonly Resting[];
  readonly workings: {
    /** Steps from the sizes to the volume; the last step's result is `volumeMm3`. */
    readonly volume: readonly Step[];
    /** Steps from the sizes to the surface; the last step's result is `surfaceMm2`. */
    readonly surface: readonly Step[];
  };
}

/** Slopes that a ruler is laid along more easily than it stands upright: up a face, or along an edge. */
export type SlopeName = 'slant' | 'slantLength' | 'slantWidth' | 'slantEdge';
/** Across or around in place of a radius, and one side of a top in place of the other. */
export type FactorName = 'diameter' | 'circumference' | 'topDiameter' | 'topCircumference' | 'topWidth';

/**
 * What may be measured on a piece in place of one of its sizes, `of`. A slope is the long side of a right triangle: the
 * height stands, and the slope reaches over `runMm` of the base. Else the size is `times` times the measurement.
 */
export type SizeWay =
  | { readonly kind: 'slope'; readonly name: SlopeName; readonly of: string; readonly runMm: number }
  | { readonly kind: 'factor'; readonly name: FactorName; readonly of: string; readonly times: number };

/** A size that a solid asks for, with the ways in which it may be given instead. */
export interface SizeField {
  readonly name: string;
  readonly unit: 'mm' | 'count';
  /** Other names under which a pupil's measurement of it is accepted, for instance `diameter` for `radius`. */
  readonly otherwise: readonly string[];
}

/** One entry of the catalogue: everything the engine needs to know of one family of solids. */
export interface SolidDefinition {
  readonly id: SolidId;
  readonly fields: readonly SizeField[];
  /** Sizes must be positive and finite and fit together; every fault is told at once. */
  readonly make: (sizes: Sizes) => Result<Solid, SizeIssue>;
  /** What may be measured in place of its sizes, for a piece of these sizes in the solid's own terms. */
  readonly ways: (own: Sizes) => readonly SizeWay[];
  /** Lopsided sizes for tests and drawings, as a kit would write them. */
  readonly example: Sizes;
}

export type SizeIssueCode =
  | 'size-missing'
  | 'size-unknown'
  | 'size-not-positive'
  | 'size-not-finite'
  | 'size-too-large'
  | 'size-too-small'
  | 'size-given-twice'
  | 'sides-not-whole'
  | 'sides-out-of-range'
  | 'triangle-impossible'
  | 'slant-too-short'
  | 'frustum-upside-down';

export type SizeIssue = Issue<SizeIssueCode>;

/** A length as a quantity for a working. */
export const mm = (value: number): Quantity => ({ value, unit: 'mm' });
