// What is known while a build is traced: two photos, the pieces placed so far, the piece in hand, the top. Kept in memory alone.
// Every step is a function from one state to the next.

import type { Solid, Vec2 } from '@cairnmark/geometry';
import type { PaperId, PhotoIssue } from '@cairnmark/photo';
import { figureOf } from '@cairnmark/photo';
import type { FitAnswer, TracedSpot } from '../../photo/fit-piece.ts';
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
  readonly issue: PhotoIssue | null;
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
  /** Number of the piece that reaches highest; null: as the sums say. */
  readonly highest: number | null;
  readonly top: Top;
}

export type Step = (before: Tracing) => Tracing;

const NO_TOP: Top = { taps: [], nudgedMm: 0 };

export const NOT_BEGUN: Tracing = {
  view: 'above',
  sheet: { what: 'ground', paper: 'a4' },
  shots: { above: null, side: null },
  pieces: [],
  hand: null,
  highest: null,
  top: NO_TOP,
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
      pieces: [],
      hand: null,
      highest: null,
      top: NO_TOP,
    };
  };

/** Another photo from above shows the build anew: what was traced on the one before is gone. */
export const withFile =
  (view: View, file: Blob): Step =>
  (before) => ({
    ...before,
    shots: { ...before.shots, [view]: { file, read: null, share: 0 } },
    ...(view === 'above' ? { pieces: [], hand: null, highest: null } : {}),
    top: NO_TOP,
  });

/** What became of a photo; of one that was put away meanwhile nothing. */
export const withShot =
  (view: View, file: Blob, change: Partial<Shot>): Step =>
  (before) => {
    const shot = before.shots[view];
    return shot?.file !== file ? before : { ...before, shots: { ...before.shots, [view]: { ...shot, ...change } } };
  };

/** The pieces stay where they were traced. */
export const withoutPhotos: Step = (before) => ({
  ...before,
  view: 'above',
  shots: { above: null, side: null },
  hand: null,
  top: NO_TOP,
});

export const pickedUp =
  (kind: string, resting: string): Step =>
  (before) => ({ ...before, hand: { kind, resting, taps: [], ways: [], way: 0, issue: null } });

export const putAway: Step = (before) => ({ ...before, hand: null });

/** Taps the piece asks for, lying as it does; 0: there is nothing on it to tap. */
export function tapsAsked(solid: Solid | undefined, resting: string): number {
  const side = solid?.restings.find(({ id }) => id === resting);
  const figure = solid === undefined || side === undefined ? null : figureOf(solid, side);
  if (figure === null) return 0;
  return figure.kind === 'corners' || figure.kind === 'log' ? 2 : 3;
}

/** A tap more, up to `most`. */
export const withTap = (tap: Vec2, most: number): Step =>
  inHand((hand) => (hand.taps.length >= most ? hand : { ...hand, taps: [...hand.taps, tap], issue: null }));

export const withoutTap: Step = inHand((hand) => tappedAt(hand, hand.taps.slice(0, -1)));

export const withoutTaps: Step = inHand((hand) => tappedAt(hand, []));

/** Where the piece stands by its taps, or why not; for the taps that were asked about alone. */
export const withWays = (taps: readonly Vec2[], answer: FitAnswer): Step =>
  inHand((hand) => {
    if (hand.taps !== taps) return hand;
    const [ways, issue] = answer.ok ? [answer.value, null] : [[], answer.issues[0] ?? null];
    return { ...hand, ways, way: 0, issue };
  });

export const otherWay: Step = inHand((hand) => ({ ...hand, way: (hand.way + 1) % Math.max(1, hand.ways.length) }));

/** The piece in hand where it is shown; null: not yet. */
export const handPiece = ({ hand }: Tracing): TracedSpot | null => hand?.ways[hand.way] ?? null;

/** The piece in hand, moved by hand. */
export const nudged = (moved: TracedSpot): Step =>
  inHand((hand) => ({ ...hand, ways: hand.ways.map((way, k) => (k === hand.way ? moved : way)) }));

/** Changes the piece in hand, when there is one. */
function inHand(change: (hand: Hand) => Hand): Step {
  return (before) => {
    if (before.hand === null) return before;
    const hand = change(before.hand);
    return hand === before.hand ? before : { ...before, hand };
  };
}

/** Other taps: where they put the piece is not known yet. */
const tappedAt = (hand: Hand, taps: Hand['taps']): Hand => ({ ...hand, taps, ways: [], way: 0, issue: null });

export const kept: Step = (before) => {
  const piece = handPiece(before);
  return piece === null
    ? before
    : { ...before, pieces: [...before.pieces, piece], hand: null, highest: null, top: NO_TOP };
};

/** The last piece alone: those above it stand on it. */
export const takenOff: Step = (before) => ({
  ...before,
  pieces: before.pieces.slice(0, -1),
  hand: null,
  highest: null,
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
