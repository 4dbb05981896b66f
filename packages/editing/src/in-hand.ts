// A piece taken up, from the shelf or from the build, and all that stays: dropped once, so that every move of the pointer
// asks only about the piece in hand. Frame of the table, mm.

import type { Box3, KnownPiece, LaidPiece, PlacedPiece, Result, Vec2 } from '@cairnmark/geometry';
import { add3, bodyBox, checkLayout, failure, meetInPlan, placePiece, success } from '@cairnmark/geometry';
import type { Entry } from './draft.ts';
import { dropAsOrdered, dropInOrder, entriesOf } from './draft.ts';
import { relaid, turnOf } from './grid.ts';
import { missingPiece } from './missing.ts';
import { restingOf } from './restings.ts';
import { noneLeft } from './stock.ts';
import type { Bench, EditIssue, FromShelf, Pieces } from './types.ts';

/** A piece that stays. */
export interface Staying {
  readonly entry: Entry;
  readonly known: KnownPiece;
  /** Its place among the pieces that stay. */
  readonly index: number;
  readonly placed: PlacedPiece;
  /** The same standing on the table, as the drop wants it. */
  readonly onTable: PlacedPiece;
  readonly box: Box3;
  /** Where its lowest point was before the piece in hand was taken up, mm. */
  readonly beforeMm: number;
}

export interface InHand {
  /** The piece wherever it was, or in the middle of the table when it comes from the shelf; not bound to the table. */
  readonly laid: LaidPiece;
  /** Its number before; null from the shelf. */
  readonly was: number | null;
  readonly known: KnownPiece;
  /** Standing in the middle of the table. */
  readonly own: PlacedPiece;
  readonly ownBox: Box3;
  readonly staying: readonly Staying[];
}

/** Takes up a piece of the build by its number, or a new one from the shelf. */
export function takeUp(pieces: Pieces, what: number | FromShelf, bench: Bench): Result<InHand, EditIssue> {
  const laid = typeof what === 'number' ? fromBuild(pieces, what) : fromShelf(pieces, what, bench);
  if (!laid.ok) return laid;
  const before = dropAsOrdered(entriesOf(pieces), bench);
  if (!before.ok) return before;
  const was = typeof what === 'number' ? what : null;
  const after = was === null ? before : dropInOrder(without(pieces, was), bench);
  if (!after.ok) return after;

  const { entries, dropped } = after.value;
  const known = checkLayout([relaid(laid.value, MIDDLE), ...entries.map((entry) => entry.laid)], bench.solids);
  if (!known.ok) return known;
  const [mine, ...others] = known.value;
  if (mine === undefined) throw new RangeError('a layout of one piece has a piece');
  const bottoms = before.value.dropped.pieces.map(({ bottomMm }) => bottomMm);
  const staying = others.flatMap((one, index): readonly Staying[] => {
    const [entry, placed] = [entries[index], dropped.pieces[index]];
    if (entry === undefined || placed === undefined) return [];
    const onTable = placed.bottomMm === 0 ? placed : placePiece(one, index, 0);
    const beforeMm = bottoms[entry.was ?? -1] ?? placed.bottomMm;
    return [{ entry, known: one, index, placed, onTable, box: bodyBox(onTable.body), beforeMm }];
  });
  const own = placePiece(mine, entries.length, 0);
  return success({ laid: laid.value, was, known: mine, own, ownBox: bodyBox(own.body), staying });
}

/** The pieces that come within `reachMm` of the piece in hand, seen from above, with its axis at `at`; the latest first. */
export function nearTo({ ownBox, staying }: InHand, [x, y]: Vec2, reachMm: number): readonly Staying[] {
  const box: Box3 = { min: add3(ownBox.min, [x, y, 0]), max: add3(ownBox.max, [x, y, 0]) };
  return staying.filter((one) => meetInPlan(one.box, box, reachMm)).reverse();
}

/** The layout without one piece, as a draft. */
export const without = (pieces: Pieces, piece: number): readonly Entry[] =>
  entriesOf(pieces).filter(({ was }) => was !== piece);

const MIDDLE = { xMm: 0, yMm: 0 } as const;

function fromBuild(pieces: Pieces, piece: number): Result<LaidPiece, EditIssue> {
  const laid = pieces[piece];
  return laid === undefined ? failure([missingPiece(pieces, piece)]) : success(relaid(laid, { on: undefined }));
}

function fromShelf(pieces: Pieces, { kind, resting, degrees }: FromShelf, bench: Bench): Result<LaidPiece, EditIssue> {
  const none = noneLeft(pieces, bench, kind);
  if (none !== null) return failure([none]);
  const known = restingOf(kind, resting, bench);
  if (!known.ok) return known;
  return success({ kind, resting: known.value, ...MIDDLE, turnRad: turnOf(degrees ?? 0) });
}
