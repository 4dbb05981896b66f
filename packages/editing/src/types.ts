// What the editor works on: the pieces of a layout in building order, and commands that change them. mm, rad; frame of
// the table.

import type { Hold, Issue, LaidPiece, Side, SolidsByKind, StackIssueCode } from '@cairnmark/geometry';

export type { Side } from '@cairnmark/geometry';

export type Pieces = readonly LaidPiece[];

/** What a build is made from: solids by kind, how many pieces there are of each, and the slack of the challenge. */
export interface Bench {
  readonly solids: SolidsByKind;
  /** Pieces of each kind that the build may use; a kind that is not listed has none. */
  readonly stock: ReadonlyMap<string, number>;
  readonly slackMm: number;
}

/** A piece from the shelf. */
export interface FromShelf {
  readonly kind: string;
  /** null: the usual way up. */
  readonly resting: string | null;
  /** Whole degrees counter-clockwise seen from above; absent: 0. */
  readonly degrees?: number;
}

/** Where a piece is let go. */
export interface Spot {
  readonly xMm: number;
  readonly yMm: number;
  /**
   * Height of the surface that was pointed at, mm; the piece settles on it where it can, under a lintel too, else on top.
   * null: on top.
   */
  readonly surfaceMm: number | null;
  /**
   * What it lines up with. `piece-below`: centre on centre, level edges flush, or against a side of what stands on the same
   * surface, where one of these is within LINE_UP_MM. `grid`: its centre on multiples of GRID_MM.
   */
  readonly lineUp: 'piece-below' | 'grid' | 'free';
}

export type Command =
  /** On top of the piece laid last, centred on it; alone on the table it stands in the middle. */
  | { readonly do: 'add'; readonly kind: string }
  | ({ readonly do: 'add-at'; readonly spot: Spot } & FromShelf)
  /** Against a side of another piece: on the table where that one stands on it, else on the surface below it or what is there. */
  | { readonly do: 'put-beside'; readonly piece: number; readonly of: number; readonly side: Side }
  /** Centred on another piece, or in the middle of the table; on top where another is in the way, on the table refused. */
  | { readonly do: 'put-on'; readonly piece: number; readonly of: number | 'table' }
  /** The offset of the upright line through its centre from that of another piece, or from the middle of the table. */
  | {
      readonly do: 'offset';
      readonly piece: number;
      readonly of: number | 'table';
      readonly xMm: number;
      readonly yMm: number;
    }
  /** Where it is now: on the table, refused where another is in the way, or on what is below. */
  | { readonly do: 'stand'; readonly piece: number; readonly on: 'table' | 'what-is-below' }
  | { readonly do: 'move-to'; readonly piece: number; readonly spot: Spot }
  /** Several pieces together, as they lie. */
  | { readonly do: 'shift'; readonly pieces: readonly number[]; readonly xMm: number; readonly yMm: number }
  | { readonly do: 'turn-to'; readonly piece: number; readonly degrees: number }
  | { readonly do: 'turn-by'; readonly piece: number; readonly degrees: number }
  | { readonly do: 'lay-on'; readonly piece: number; readonly resting: string }
  /** The next resting face of the solid. */
  | { readonly do: 'lay-next'; readonly piece: number }
  | { readonly do: 'reorder'; readonly piece: number; readonly to: number }
  /** One more of it, on top, with the same centre. */
  | { readonly do: 'copy'; readonly piece: number }
  /** What stood on it drops. */
  | { readonly do: 'take-off'; readonly piece: number }
  | { readonly do: 'hold'; readonly piece: number; readonly held: Hold | null }
  | { readonly do: 'clear' };

export interface Edited {
  /** The same array as before when nothing changed; pieces that did not change are the same objects. */
  readonly pieces: Pieces;
  /** The piece that was worked on, in the new order (of several the lowest); null when it is gone. */
  readonly piece: number | null;
  /** True when it had to come earlier in the building order than asked, to get under another piece. */
  readonly earlier: boolean;
}

export type EditIssueCode = StackIssueCode | 'none-left' | 'no-such-piece' | 'no-such-face';

/** Pieces in `path` and in `other` are numbered as before the command, from 0; a new one comes after all of them. */
export type EditIssue = Issue<EditIssueCode>;
