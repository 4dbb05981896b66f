// What a net is: pieces of paper to cut out, true to size. mm, on a sheet of its own for each piece.
//
// The drawing shows the inside of the solid. Ink is printed on the side that ends inside, so every fold is a valley fold
// for whoever looks at the ink, and the outside stays clean. Drawn the other way round, a net would fold to the mirror
// image, each corner in the wrong place.

import type { Issue, Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import type { Frame } from './fit/frame.ts';
import type { Path } from './path/path.ts';
import type { Room } from './plane/room.ts';
import type { Placed } from './unfold/faces.ts';

export interface Net {
  readonly solid: Solid;
  /** Connected pieces; of a round solid the wall, then each disc as one of its own. */
  readonly parts: readonly NetPart[];
  /** Paper of the faces: the surface of the solid, less its base where that is left open. */
  readonly paperMm2: number;
  readonly tabsMm2: number;
  /** Faces to glue last: they bear no tabs where that is as good. */
  readonly lids: readonly number[];
  /** True when some tab is too small for glue: use tape there. */
  readonly tooSmallTabs: boolean;
  /** As it was asked for. */
  readonly tabDepthMm: number;
  readonly base: 'closed' | 'open';
}

export interface NetPart {
  /** The line to cut, tabs included: closed, counter-clockwise. */
  readonly cut: Path;
  readonly folds: readonly NetFold[];
  readonly faces: readonly NetFace[];
  readonly tabs: readonly NetTab[];
  /** Where a name has most room: that of its roomiest face. */
  readonly label: Room;
}

/**
 * A line to fold. A `face` fold parts two faces, the first laid before the second. A `tab` fold parts a face from a tab,
 * or from the whole row of teeth along a rim; of a row it is an arc where the rim is one on the sheet.
 */
export type NetFold =
  | { readonly kind: 'face'; readonly path: Path; readonly between: readonly [number, number] }
  | { readonly kind: 'tab'; readonly path: Path; readonly face: number };

export interface NetFace {
  /** Its number among the flat faces of the solid; the curved surface has the number after the last of them. */
  readonly face: number;
  readonly kind: 'polygon' | 'disc' | 'rectangle' | 'sector' | 'ring-sector';
  /** Closed, counter-clockwise, without tabs. */
  readonly outline: Path;
  readonly areaMm2: number;
  readonly centroid: Vec2;
  /** The largest circle that has room in it: where to write. */
  readonly room: Room;
  /** Where a point of the part lies when the net is folded, in the solid's own frame; null for a curved surface. */
  readonly placed: Placed | null;
}

export interface NetTab {
  /** A tooth is one of the row along a round rim. */
  readonly kind: 'flap' | 'tooth';
  /** Closed, counter-clockwise, its fold included. */
  readonly outline: Path;
  readonly areaMm2: number;
  readonly depthMm: number;
  /** The face that it is cut with, and the face that it is glued behind. */
  readonly host: number;
  readonly mate: number;
  /** Where it comes to lie on its mate, as a ring on the part of the mate; for a tooth, with its fold along a chord. */
  readonly landing: readonly Vec2[];
  /** Centre of its area when it is folded and glued, in the solid's own frame. */
  readonly centroid: Vec3;
}

export interface NetOptions {
  /** How deep tabs are where there is room: 8 mm for most hands, 10 for young ones. */
  readonly tabDepthMm: number;
  /**
   * Whether the solid is left open at its base, as a kit may say; closed when it is not said, and where the solid has no
   * base to leave open.
   */
  readonly base?: 'closed' | 'open';
  /** A page: where the usual net of the solid does not fit it and another known one does, that one is taken. */
  readonly frame?: Frame;
}

/**
 * `no-net`: a ball or half a ball is bought, not folded (details: `solid`). `too-large`: some part is larger than the
 * page; see `checkFit`. `face-too-large`: a face alone, with its tabs, is larger than the page, so no split helps.
 */
export type NetIssueCode = 'no-net' | 'too-large' | 'face-too-large';
export type NetIssue = Issue<NetIssueCode>;
