// One piece more, one less, or the same pieces in another building order.

import type { LaidPiece, Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import { dropAsOrdered, dropInOrder, entriesOf, finish } from './draft.ts';
import { onGrid, relaid, turnOf } from './grid.ts';
import { without } from './in-hand.ts';
import { missingPiece } from './missing.ts';
import { restingOf } from './restings.ts';
import { noneLeft } from './stock.ts';
import type { Bench, Edited, EditIssue, Pieces } from './types.ts';

/** A piece the usual way up over the centre of the one laid last; the first in the middle of the table. */
export function add(pieces: Pieces, kind: string, bench: Bench): Result<Edited, EditIssue> {
  const resting = restingOf(kind, null, bench);
  if (!resting.ok) return resting;
  const { xMm, yMm } = pieces.at(-1) ?? { xMm: 0, yMm: 0 };
  const laid = { kind, resting: resting.value, xMm: onGrid(xMm), yMm: onGrid(yMm), turnRad: turnOf(0) };
  return addLast(pieces, laid, bench);
}

/** The same piece once more on top, loose and not yet weighed. */
export function copy(pieces: Pieces, piece: number, bench: Bench): Result<Edited, EditIssue> {
  const laid = pieces[piece];
  if (laid === undefined) return failure([missingPiece(pieces, piece)]);
  return addLast(pieces, { ...relaid(laid, { on: undefined, held: undefined, weighed: undefined }) }, bench);
}

export function takeOff(pieces: Pieces, piece: number, bench: Bench): Result<Edited, EditIssue> {
  if (pieces[piece] === undefined) return failure([missingPiece(pieces, piece)]);
  return finish(pieces, dropInOrder(without(pieces, piece), bench), false);
}

/** The piece at another place in the order, from 0; the others keep theirs among themselves. */
export function reorder(pieces: Pieces, piece: number, to: number, bench: Bench): Result<Edited, EditIssue> {
  const laid = pieces[piece];
  if (laid === undefined) return failure([missingPiece(pieces, piece)]);
  if (pieces[to] === undefined) return failure([missingPiece(pieces, to)]);
  const others = without(pieces, piece);
  const entries = [...others.slice(0, to), { laid, was: piece, worked: true }, ...others.slice(to)];
  return finish(pieces, dropAsOrdered(entries, bench), false);
}

function addLast(pieces: Pieces, laid: LaidPiece, bench: Bench): Result<Edited, EditIssue> {
  const none = noneLeft(pieces, bench, laid.kind);
  if (none !== null) return failure([none]);
  const entries = [...entriesOf(pieces), { laid, was: null, worked: true }];
  return finish(pieces, dropAsOrdered(entries, bench), false);
}
