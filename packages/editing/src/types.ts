// What the editor works on: the pieces of a layout in building order, and commands that change them. mm, rad; frame of
// the table.

import type { Hold, Issue, LaidPiece, SolidsByKind, StackIssueCode } from '@cairnmark/geometry';

export type Pieces = readonly LaidPiece[];

/** What a build is made from: solids by kind, how many pieces there are of each, and the slack of the challenge. */
export interface Bench {
  readonly solids: SolidsByKind;
  /** Pieces of each kind that the build may use; a kind that is not listed has none. */
  readonly stock: ReadonlyMap<string, number>;
  readonly slackMm: number;
}

export type Side = 'left' | 'right' | 'back' | 'front';

/** Where a piece is let go. */
export interface Spot {
  readonly xMm: number;
  readonly yMm: number;
  /** Height of the surface that was pointed at, mm; the piece settles on it where it can, under a lintel too. null: on top. */
  readonly surfaceMm: number | null;
  /** What it lines up with. */
  readonly lineUp: 'piece-below' | 'grid' | 'free';
}

export type Command =
  /** On top of the piece laid last, centred on it; alone on the table it stands in the middle. */
  | { readonly do: 'add'; readonly kind: string }
  | { readonly do: 'add-at'; readonly kind: string; readonly resting: string | null; readonly spot: Spot }
  /** Against a side of another piece, standing on the table or on what is there. */
  | { readonly do: 'put-beside'; readonly piece: number; readonly of: number; readonly side: Side }
  /** Centred on another piece, or in the middle of the table. */
  | { readonly do: 'put-on'; readonly piece: number; readonly of: number | 'table' }
  /** The offset of the upright line through its centre from that of another piece, or from the middle of the table. */
  | {
      readonly do: 'offset';
      readonly piece: number;
      readonly of: number | 'table';
      readonly xMm: number;
      readonly yMm: number;
    }
  | { readonly do: 'move-to'; readonly piece: number; readonly spot: Spot }
  /** Several pieces together, as they lie. */
  | { readonly do: 'shift'; readonly pieces: readonly number[]; readonly xMm: number; readonly yMm: number }
  | { readonly do: 'turn-to'; readonly piece: number; readonly degrees: number }
  | { readonly do: 'turn-by'; readonly piece: number; readonly degrees: number }
  | { readonly do: 'lay-on'; readonly piece: number; readonly resting: string }
  /** The next resting face of the solid. */
  | { readonly do: 'lay-next'; readonly piece: number }
  | { readonly do: 'reorder'; readonly piece: number; readonly to: number }
  | { readonly do: 'copy'; readonly piece: number }
  | { readonly do: 'take-off'; readonly piece: number }
  | { readonly do: 'hold'; readonly piece: number; readonly held: Hold | null }
  | { readonly do: 'clear' };

export interface Edited {
  readonly pieces: Pieces;
  /** The piece that was worked on, in the new order; null when it is gone. */
  readonly piece: number | null;
  /** True when it had to come earlier in the building order than asked, to get under another piece. */
  readonly earlier: boolean;
}

export type EditIssueCode = StackIssueCode | 'none-left' | 'no-such-piece' | 'no-such-face';

export type EditIssue = Issue<EditIssueCode>;
