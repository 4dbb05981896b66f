// The one door of the editor: a command and a layout in, a new layout out, or every reason why not.

import type { LaidPiece, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { finish } from './draft.ts';
import { relaid, sumOnGrid, turnBy, turnOf } from './grid.ts';
import { change } from './in-place.ts';
import { missingPiece } from './missing.ts';
import { add, copy, reorder, takeOff } from './order.ts';
import { putAt, putBeside, putOn } from './put.ts';
import { restingAfter, restingOf } from './restings.ts';
import type { Bench, Command, Edited, EditIssue, Pieces } from './types.ts';

/**
 * The layout after a command. It is one that `buildStack` accepts, or the command is refused and nothing has changed. The
 * pieces given must be such a layout themselves; else any command but `clear` may be refused with its faults.
 */
export function edit(pieces: Pieces, command: Command, bench: Bench): Result<Edited, EditIssue> {
  switch (command.do) {
    case 'add':
      return add(pieces, command.kind, bench);
    case 'add-at':
      return putAt(pieces, command, command.spot, bench);
    case 'put-beside':
      return putBeside(pieces, command, bench);
    case 'put-on':
      return putOn(pieces, command.piece, command.of, bench);
    case 'move-to':
      return putAt(pieces, command.piece, command.spot, bench);
    case 'offset':
      return offset(pieces, command, bench);
    case 'reorder':
      return reorder(pieces, command.piece, command.to, bench);
    case 'copy':
      return copy(pieces, command.piece, bench);
    case 'take-off':
      return takeOff(pieces, command.piece, bench);
    case 'clear':
      return finish(pieces, success({ entries: [], dropped: { pieces: [], supports: [] } }), false);
    case 'lay-on':
      return layOn(pieces, command, bench);
    default:
      return inPlace(pieces, command, bench);
  }
}

type Of<Name extends Command['do']> = Extract<Command, { readonly do: Name }>;

/** Commands that leave the order as it is and need to know nothing but the piece. */
function inPlace(
  pieces: Pieces,
  command: Of<'shift' | 'turn-to' | 'turn-by' | 'lay-next' | 'stand' | 'hold'>,
  bench: Bench,
): Result<Edited, EditIssue> {
  switch (command.do) {
    case 'shift': {
      const { xMm, yMm } = command;
      return change(pieces, command.pieces, (laid) => shifted(laid, xMm, yMm), bench);
    }
    case 'turn-to':
      return change(pieces, [command.piece], (laid) => relaid(laid, { turnRad: turnOf(command.degrees) }), bench);
    case 'turn-by': {
      const turned = (laid: LaidPiece) => relaid(laid, { turnRad: turnBy(laid.turnRad, command.degrees) });
      return change(pieces, [command.piece], turned, bench);
    }
    case 'lay-next': {
      const next = (laid: LaidPiece) => relaid(laid, { resting: restingAfter(laid.kind, laid.resting, bench) });
      return change(pieces, [command.piece], next, bench);
    }
    case 'stand': {
      const on = command.on === 'table' ? 'table' : undefined;
      return change(pieces, [command.piece], (laid) => relaid(laid, { on }), bench);
    }
    case 'hold':
      return change(pieces, [command.piece], (laid) => relaid(laid, { held: command.held ?? undefined }), bench);
  }
}

const shifted = (laid: LaidPiece, xMm: number, yMm: number): LaidPiece =>
  relaid(laid, { xMm: sumOnGrid(laid.xMm, xMm), yMm: sumOnGrid(laid.yMm, yMm) });

function offset(pieces: Pieces, { piece, of, xMm, yMm }: Of<'offset'>, bench: Bench): Result<Edited, EditIssue> {
  const from = of === 'table' ? { xMm: 0, yMm: 0 } : pieces[of];
  if (from === undefined || of === piece) return failure([missingPiece(pieces, Number(of))]);
  const there = (laid: LaidPiece) => relaid(laid, { xMm: sumOnGrid(from.xMm, xMm), yMm: sumOnGrid(from.yMm, yMm) });
  return change(pieces, [piece], there, bench);
}

function layOn(pieces: Pieces, { piece, resting }: Of<'lay-on'>, bench: Bench): Result<Edited, EditIssue> {
  const laid = pieces[piece];
  if (laid === undefined) return failure([missingPiece(pieces, piece)]);
  const known = restingOf(laid.kind, resting, bench);
  return known.ok ? change(pieces, [piece], (one) => relaid(one, { resting }), bench) : known;
}
