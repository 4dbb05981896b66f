// A layout says where pieces were put; a stack is the layout with every piece dropped onto what is below it.

import type { Outline } from '../kernel/outline.ts';
import type { Issue } from '../kernel/result.ts';
import type { Rotation } from '../kernel/rotation.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import type { FlatFace, Resting, Solid } from '../solids/types.ts';

/** A piece as laid out, in building order. Its height is never given: it is derived. */
export interface LaidPiece {
  /** Id of the kind in the kit. */
  readonly kind: string;
  /** Id of the resting face, as the solid names it. */
  readonly resting: string;
  /** Where the upright line through its centre of mass (as a full solid) meets the table, mm. */
  readonly xMm: number;
  readonly yMm: number;
  /** Counter-clockwise seen from above, rad. */
  readonly turnRad: number;
  /** 'table': it stands on the table, and is refused if another piece is in its way. Absent: it lands on what is below. */
  readonly on?: 'table';
  /** How it is held when it does not simply rest, as people see it on the real build. */
  readonly held?: Hold;
  /** As weighed, when it was repaired or weighted. */
  readonly weighed?: Weighed;
}

/** What the statics of stiff, unglued pieces do not cover. */
export type Hold = 'taped' | 'glued' | 'leaning' | 'nested';

export interface Weighed {
  readonly massG: number;
  /** Height of its centre of mass in the solid's own frame, mm; absent: where its material puts it. */
  readonly centreMm?: number;
}

/** Outlines traced on a photo of the build from above, each on its own plane. */
export interface TracedOutline {
  readonly outline: Outline;
  /** Height of the plane on which it was traced, mm above the table. */
  readonly planeMm: number;
  /** True when the outline is of a piece that touches the table. */
  readonly onTable: boolean;
}

export type Layout =
  | {
      readonly kind: 'laid-out';
      readonly pieces: readonly LaidPiece[];
      /** Its places were found on photos, and are off by as much as those. Absent: they were set by hand. */
      readonly traced?: true;
    }
  | {
      readonly kind: 'traced';
      readonly outlines: readonly TracedOutline[];
      /** Kind ids of the pieces used, one entry a piece. */
      readonly pieces: readonly string[];
      readonly heightMm?: number;
    }
  | { readonly kind: 'numbers-only'; readonly pieces: readonly string[] };

/** Kind id to solid, as the group measured it. */
export type SolidsByKind = ReadonlyMap<string, Solid>;

/** A piece in its final place. Body, faces and outline are in the frame of the table (z = 0). */
export interface PlacedPiece {
  readonly index: number;
  readonly kind: string;
  readonly solid: Solid;
  readonly resting: Resting;
  /** From the own frame of the solid to the table: turned by `rotation`, then moved by `shift`. */
  readonly rotation: Rotation;
  readonly shift: Vec3;
  readonly bottomMm: number;
  readonly topMm: number;
  readonly body: Body;
  readonly flatFaces: readonly FlatFace[];
  readonly outline: Outline;
}

/** Where a piece rests on another piece or on the table. Found by the drop. */
export interface Support {
  readonly upper: number;
  /** Index of the piece below, or the table. */
  readonly lower: number | 'table';
  /** Unit normal of the touching surfaces, pointing up from the lower one. */
  readonly normal: Vec3;
  /** mm of gap to it that the drop closed, up to the slack (0 for the piece that decided the height). */
  readonly closedMm: number;
}

/** Two flat faces of two pieces that touch, or a face on the table; the area counts once here, twice in the surface lost. */
export interface FaceContact {
  readonly first: number;
  readonly second: number | 'table';
  readonly areaMm2: number;
}

export interface Stack {
  readonly pieces: readonly PlacedPiece[];
  readonly supports: readonly Support[];
  readonly faceContacts: readonly FaceContact[];
}

export type StackIssueCode =
  | 'kind-unknown'
  | 'resting-unknown'
  | 'position-not-finite'
  | 'position-too-far'
  | 'overlaps'
  | 'mass-not-positive'
  | 'centre-outside-piece'
  | 'too-many-pieces';

export type StackIssue = Issue<StackIssueCode>;
