// What is known while a build is traced: two photos, the pieces placed so far, the piece in hand, the top. Kept in memory alone.
// Every step is a function from one state to the next.

import type { Vec2 } from '@cairnmark/geometry';
import type { PaperId, PhotoIssue, TracedShape } from '@cairnmark/photo';
import type { TracedSpot } from '../../photo/fit-piece.ts';
import type { ReadPhoto, RefusedFile } from '../../workers/photo-questions.ts';

export type View = 'above' | 'side';
export interface SheetChoice {
  readonly what: 'ground' | 'fort' | 'plain';
  readonly paper: PaperId;
}

export interface Shot {
  readonly file: Blob;
  /** null: being looked at. */
  readonly read: ReadPhoto | RefusedFile | 'failed' | null;
  /** How far it has come, 0 to 1. */
  readonly share: number;
}

/** The piece that is being placed. */
export interface Hand {
  readonly kind: string;
  readonly resting: string;
  /** px of the photo from above. */
  readonly taps: readonly Vec2[];
  /** Places that fit the taps, the likeliest first, and which of them is shown; none before the last tap. */
  readonly ways: readonly TracedSpot[];
  readonly way: number;
  /** 'failed': nobody could look. */
  readonly issue: PhotoIssue | 'failed' | null;
}

/** A shape that is not on the list, while it is tapped corner by corner. */
export interface ShapeInHand {
  /** px of the photo from above. */
  readonly taps: readonly Vec2[];
  /** Height of the edge that is tapped above the table, mm; null: nobody has said it yet. */
  readonly planeMm: number | null;
  readonly onTable: boolean;
  /** Every corner is tapped. */
  readonly closed: boolean;
  readonly found: TracedShape | null;
  /** 'failed': nobody could look. */
  readonly issue: PhotoIssue | 'failed' | null;
  /** The piece of the kit that it is; null: none of them. */
  readonly kind: string | null;
}

/** A shape that is done. */
export interface KeptShape {
  readonly shape: TracedShape;
  readonly planeMm: number;
  readonly onTable: boolean;
  readonly kind: string | null;
}

export interface Top {
  /** px of the photo from the side. */
  readonly taps: readonly Vec2[];
  /** How far the line was nudged from where the taps put it, mm. */
  readonly nudgedMm: number;
}

export interface Tracing {
  readonly view: View;
  readonly sheet: SheetChoice;
  readonly shots: Readonly<Record<View, Shot | null>>;
  /** From the table up. */
  readonly pieces: readonly TracedSpot[];
  readonly hand: Hand | null;
  readonly shapes: readonly KeptShape[];
  readonly shapeInHand: ShapeInHand | null;
  /** Number of the piece that reaches highest, or of a shape, counted on from the pieces; null: as the sums say. */
  readonly highest: number | null;
  readonly top: Top;
}

export type Step = (before: Tracing) => Tracing;

const NO_TOP: Top = { taps: [], nudgedMm: 0 };

/** Nothing is traced. */
const NOTHING = { pieces: [], hand: null, shapes: [], shapeInHand: null, highest: null, top: NO_TOP } as const;

/** What stands differs: which of it is highest, and where its top is, has to be said anew. */
export const OTHER_BUILD = { hand: null, shapeInHand: null, highest: null, top: NO_TOP } as const;

export const NOT_BEGUN: Tracing = {
  view: 'above',
  sheet: { what: 'ground', paper: 'a4' },
  shots: { above: null, side: null },
  ...NOTHING,
};

/** The camera and the pixels of a photo that can be measured by; null: there is none. */
export function measured({ shots }: Tracing, view: View) {
  const read = shots[view]?.read;
  if (read === null || read === undefined || read === 'failed' || read.photo === null || !read.camera.ok) return null;
  return { photo: read.photo, camera: read.camera.value, halfTurned: read.halfTurned };
}

export const toView =
  (view: View): Step =>
  (before) => ({ ...before, view });

/** Another sheet is looked for anew in both photos. */
export const onSheet =
  (sheet: SheetChoice): Step =>
  (before) => {
    const { above, side } = before.shots;
    const anew = (shot: Shot | null): Shot | null => (shot === null ? null : { ...shot, read: null, share: 0 });
    return {
      ...before,
      sheet,
      shots: { above: anew(above), side: anew(side) },
      ...NOTHING,
    };
  };

/** Another photo from above shows the build anew: what was traced on the one before is gone. */
export const withFile =
  (view: View, file: Blob): Step =>
  (before) => ({
    ...before,
    shots: { ...before.shots, [view]: { file, read: null, share: 0 } },
    ...(view === 'above' ? NOTHING : {}),
    top: NO_TOP,
  });

/** What became of a photo; of one that was put away meanwhile nothing. */
export const withShot =
  (view: View, file: Blob, change: Partial<Shot>): Step =>
  (before) => {
    const shot = before.shots[view];
    if (shot?.file !== file) return before;
    const shots = { ...before.shots, [view]: { ...shot, ...change } };
    // Where the pages of a fort's sheet lie, the photo from above says: the one from the side is looked at anew.
    const isAnew = view === 'above' && before.sheet.what === 'fort' && change.read !== undefined && shots.side !== null;
    return {
      ...before,
      shots: isAnew && shots.side ? { ...shots, side: { ...shots.side, read: null, share: 0 } } : shots,
    };
  };

/** The pieces stay where they were traced. */
export const withoutPhotos: Step = (before) => ({
  ...before,
  view: 'above',
  shots: { above: null, side: null },
  hand: null,
  shapeInHand: null,
  top: NO_TOP,
});

export const highestIs =
  (piece: number): Step =>
  (before) => ({ ...before, highest: piece, top: NO_TOP });

export const withTopTap =
  (tap: Vec2, most: number): Step =>
  (before) =>
    before.top.taps.length >= most ? before : { ...before, top: { taps: [...before.top.taps, tap], nudgedMm: 0 } };

export const withoutTopTap: Step = (before) => ({
  ...before,
  top: { taps: before.top.taps.slice(0, -1), nudgedMm: 0 },
});

export const withoutTop: Step = (before) => ({ ...before, top: NO_TOP });

export const topNudged =
  (mm: number): Step =>
  (before) => ({ ...before, top: { ...before.top, nudgedMm: before.top.nudgedMm + mm } });
