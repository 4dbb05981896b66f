// A piece put somewhere: where the hand lets it go, on another piece, or against the side of one.

import type { Result, Side } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { Entry } from './draft.ts';
import { dropAsOrdered, finish } from './draft.ts';
import { onGrid, relaid } from './grid.ts';
import type { InHand, Staying } from './in-hand.ts';
import { takeUp } from './in-hand.ts';
import { missingPiece } from './missing.ts';
import { settleAt } from './settle-at.ts';
import { DIRECTIONS, pointAt } from './sides.ts';
import { touchingAt } from './touching.ts';
import type { Bench, Edited, EditIssue, FromShelf, Pieces, Spot } from './types.ts';

/** Let go at a spot. */
export function putAt(pieces: Pieces, what: number | FromShelf, spot: Spot, bench: Bench): Result<Edited, EditIssue> {
  const hand = takeUp(pieces, what, bench);
  return hand.ok ? letGo(pieces, hand.value, spot, bench) : hand;
}

/** Centred on another piece, or in the middle of the table. */
export function putOn(pieces: Pieces, piece: number, of: number | 'table', bench: Bench): Result<Edited, EditIssue> {
  const hand = takeUp(pieces, piece, bench);
  if (!hand.ok) return hand;
  if (of === 'table') return onTable(pieces, hand.value, 0, 0, bench);
  const under = stayingAs(hand.value, of);
  if (under === undefined) return failure([missingPiece(pieces, of)]);
  const { xMm, yMm } = under.entry.laid;
  return letGo(pieces, hand.value, { xMm, yMm, surfaceMm: under.placed.topMm, lineUp: 'free' }, bench);
}

/** Against a side of another piece, centre to centre, on the surface that one stands on. */
export function putBeside(
  pieces: Pieces,
  { piece, of, side }: { readonly piece: number; readonly of: number; readonly side: Side },
  bench: Bench,
): Result<Edited, EditIssue> {
  const hand = takeUp(pieces, piece, bench);
  if (!hand.ok) return hand;
  const neighbour = stayingAs(hand.value, of);
  if (neighbour === undefined) return failure([missingPiece(pieces, of)]);
  const { axis } = DIRECTIONS[side];
  const { laid } = neighbour.entry;
  const [alongMm, acrossMm] = axis === 0 ? [laid.xMm, onGrid(laid.yMm)] : [laid.yMm, onGrid(laid.xMm)];
  const from = pointAt(axis, alongMm, acrossMm);
  const [xMm, yMm] = pointAt(axis, touchingAt(hand.value.own.outline, neighbour.placed.outline, side, from), acrossMm);
  const { bottomMm } = neighbour.placed;
  if (bottomMm === 0) return onTable(pieces, hand.value, xMm, yMm, bench);
  return letGo(pieces, hand.value, { xMm, yMm, surfaceMm: bottomMm, lineUp: 'free' }, bench);
}

const stayingAs = ({ staying }: InHand, number: number): Staying | undefined =>
  staying.find(({ entry }) => entry.was === number);

function letGo(pieces: Pieces, hand: InHand, spot: Spot, bench: Bench): Result<Edited, EditIssue> {
  const settled = settleAt(hand, spot, bench);
  if (!settled.ok) return settled;
  const { laid, index } = settled.value;
  return finish(pieces, dropAsOrdered(inserted(hand, laid, index), bench), index < (hand.was ?? hand.staying.length));
}

function onTable(pieces: Pieces, hand: InHand, xMm: number, yMm: number, bench: Bench): Result<Edited, EditIssue> {
  const laid = relaid(hand.laid, { xMm, yMm, on: 'table' });
  return finish(pieces, dropAsOrdered(inserted(hand, laid, hand.staying.length), bench), false);
}

function inserted({ staying, was }: InHand, laid: Entry['laid'], index: number): readonly Entry[] {
  const others = staying.map(({ entry }) => entry);
  return [...others.slice(0, index), { laid, was, worked: true }, ...others.slice(index)];
}
