// The piece in hand while a build is traced: picked up, tapped, fitted, nudged, kept.

import type { Solid, Vec2 } from '@cairnmark/geometry';
import { figureOf } from '@cairnmark/photo';
import type { FitAnswer, TracedSpot } from '../../photo/fit-piece.ts';
import type { Hand, Step, Tracing } from './tracing.ts';
import { OTHER_BUILD } from './tracing.ts';

export const pickedUp =
  (kind: string, resting: string): Step =>
  (before) => ({
    ...before,
    shapeInHand: null,
    hand: { kind, resting, taps: [], ways: [], way: 0, issue: null },
  });

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

export const fitFailed = (taps: readonly Vec2[]): Step =>
  inHand((hand) => (hand.taps === taps ? { ...hand, issue: 'failed' } : hand));

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
  return piece === null ? before : { ...before, ...OTHER_BUILD, pieces: [...before.pieces, piece] };
};

/** The last piece alone: those above it stand on it. */
export const takenOff: Step = (before) => ({
  ...before,
  ...OTHER_BUILD,
  pieces: before.pieces.slice(0, -1),
});
