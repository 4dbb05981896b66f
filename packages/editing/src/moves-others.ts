// Does a piece that comes into the middle of the building order leave the others where they are? Only pieces after it can
// move, and of these only what lies over it or over one that has moved. Frame of the table, mm.

import type { Box3, PlacedPiece } from '@cairnmark/geometry';
import { bodyBox, CONTACT_MM, landOn, meetInPlan, placePiece, SAME_LEVEL_MM, standAmong } from '@cairnmark/geometry';
import type { Staying } from './in-hand.ts';
import type { Settled } from './settle-at.ts';

/**
 * True when some piece would no longer be where it is, nor where it was before the piece in hand was taken from under it;
 * differences that the slack covers do not count, as a pillar a little too tall still goes under its lintel.
 */
export function movesOthers({ placed, index }: Settled, staying: readonly Staying[], slackMm: number): boolean {
  const reachMm = CONTACT_MM + slackMm;
  const moved: Moved[] = [{ placed, box: bodyBox(placed.body) }];
  for (const one of staying.slice(index)) {
    const under = moved.filter(({ box }) => meetInPlan(box, one.box, 0));
    if (under.length === 0) continue;
    if (one.entry.laid.on === 'table') {
      const among = under.map((other) => other.placed);
      if ('depthMm' in standAmong(one.onTable, among, reachMm)) return true;
      continue;
    }
    const { bottomMm } = landOn(one.onTable, beforeIn(staying, one, moved), reachMm);
    const away = Math.min(Math.abs(bottomMm - one.placed.bottomMm), Math.abs(bottomMm - one.beforeMm));
    if (away > slackMm + SAME_LEVEL_MM) return true;
    if (Math.abs(bottomMm - one.placed.bottomMm) <= SAME_LEVEL_MM) continue;
    moved.push({ placed: placePiece(one.known, one.index, bottomMm), box: one.box });
  }
  return false;
}

/** A piece that is not where it is without the piece in hand, or the piece in hand. */
interface Moved {
  readonly placed: PlacedPiece;
  readonly box: Box3;
}

/** All that a piece can land on: what comes before it and lies near it, the highest first. */
function beforeIn(staying: readonly Staying[], upper: Staying, moved: readonly Moved[]): readonly PlacedPiece[] {
  const still = staying
    .slice(0, upper.index)
    .filter(({ box, index }) => meetInPlan(box, upper.box, 0) && !moved.some((other) => other.placed.index === index))
    .map(({ placed }) => placed);
  return [...moved.map(({ placed }) => placed), ...still].sort((a, b) => b.topMm - a.topMm);
}
