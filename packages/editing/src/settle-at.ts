// Where the piece in hand comes to rest: on top of all, or on the surface pointed at where some place in the building order
// lets it land there and leaves every other piece at its height. The latest such place is taken. Frame of the table, mm.

import type { LaidPiece, Landing, PlacedPiece, Result, StackIssue } from '@cairnmark/geometry';
import { CONTACT_MM, checkLayout, failure, landOn, placePiece, success } from '@cairnmark/geometry';
import { relaid } from './grid.ts';
import type { InHand, Staying } from './in-hand.ts';
import { nearTo } from './in-hand.ts';
import { lineUp } from './line-up.ts';
import { movesOthers } from './moves-others.ts';
import type { Bench, EditIssue, Spot } from './types.ts';

/** Where it would come to rest, were it let go. */
export interface Settled {
  readonly laid: LaidPiece;
  readonly placed: PlacedPiece;
  /** Its place among the pieces that stay: those from there on are dropped after it. */
  readonly index: number;
  readonly landing: Landing;
}

export function settleAt(hand: InHand, spot: Spot, { solids, slackMm }: Bench): Result<Settled, EditIssue> {
  const reachMm = CONTACT_MM + slackMm;
  const [xMm, yMm] = lineUp(spot, hand, reachMm);
  const laid = relaid(hand.laid, { xMm, yMm });
  const last = hand.staying.length;
  const checked = checkLayout([laid], solids);
  if (!checked.ok) return failure(checked.issues.map((issue) => ofPiece(hand.was ?? last, issue)));

  const onTable = placePiece({ ...hand.known, laid }, last, 0);
  const near = nearTo(hand, [xMm, yMm], 0);
  const landAt = (before: number): Landing => landBefore(before, onTable, near, reachMm);
  const settled = (index: number, landing: Landing): Settled => {
    const { bottomMm } = landing;
    const placed = bottomMm === 0 ? onTable : placePiece({ ...hand.known, laid }, last, bottomMm);
    return { laid, placed, index, landing };
  };
  const onTop = settled(last, landAt(last));
  if (spot.surfaceMm === null) return success(onTop);

  const surfaceMm = Math.max(0, spot.surfaceMm);
  const latest = latestBelow(surfaceMm + reachMm, onTop, landAt);
  for (const index of [latest, ...near.map((one) => one.index).filter((before) => before < latest)]) {
    const landing = landAt(index);
    if (index === last || landing.bottomMm < surfaceMm - CONTACT_MM) break;
    const there = settled(index, landing);
    if (!movesOthers(there, hand.staying, slackMm)) return success(there);
    // Yet earlier it can only help pieces that stood on it before.
    if (hand.was === null) break;
  }
  return success(onTop);
}

const ofPiece = (piece: number, issue: StackIssue): EditIssue => {
  const [list = 'pieces', , ...field] = issue.path;
  return { ...issue, path: [list, piece, ...field] };
};

/** Where it lands on those of the near pieces that come before a place in the order. */
const landBefore = (before: number, onTable: PlacedPiece, near: readonly Staying[], reachMm: number): Landing =>
  landOn(
    onTable,
    near.flatMap(({ index, placed }) => (index < before ? [placed] : [])),
    reachMm,
  );

/** The latest place at which it lands no higher than `mostMm`: each time it lands too high, before what holds it up there. */
function latestBelow(mostMm: number, onTop: Settled, landAt: (before: number) => Landing): number {
  let { index, landing } = onTop;
  while (landing.bottomMm > mostMm) {
    for (const { lower, closedMm } of landing.supports) {
      if (lower !== 'table' && closedMm === 0) index = Math.min(index, lower);
    }
    landing = landAt(index);
  }
  return index;
}
