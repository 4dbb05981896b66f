// From a layout to a stack: every piece in building order is dropped onto the pieces laid before it. Heights are never
// taken from outside; the table is z = 0. mm, rad.

import type { Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import { bodyBox } from './body-box.ts';
import { checkLayout } from './check-layout.ts';
import { faceContacts } from './face-contacts.ts';
import { landOn, standAmong } from './landing.ts';
import { placePiece } from './place.ts';
import { earlierNeighbours } from './plan-grid.ts';
import type { LaidPiece, PlacedPiece, SolidsByKind, Stack, StackIssue, Support } from './types.ts';

/** Every piece where it comes to lie, and what each rests on: a stack without the touching faces, which take longest. */
export type DroppedPieces = Pick<Stack, 'pieces' | 'supports'>;

/**
 * The build that a layout describes. Measured sizes are never quite equal, so that a slab on pillars of 50.0 and 48.5 mm
 * lies on both in the class and on one in the sums: a piece that comes within `slackMm` of what is below it rests on it
 * too (2 mm for paper; 0: only where they touch), unless a thin piece fills that gap. Heights do not depend on
 * the slack. Refused with every unknown name and impossible position at once; a layout free of these is refused with every
 * piece that was put on the table ("on": "table") where an earlier one is in its way.
 */
export function buildStack(
  pieces: readonly LaidPiece[],
  solids: SolidsByKind,
  slackMm: number,
): Result<Stack, StackIssue> {
  const dropped = dropPieces(pieces, solids, slackMm);
  if (!dropped.ok) return dropped;
  return success({ ...dropped.value, faceContacts: faceContacts(dropped.value.pieces) });
}

/** The same pieces and supports as in `buildStack`, refused for the same reasons: all that an editor asks at every step. */
export function dropPieces(
  pieces: readonly LaidPiece[],
  solids: SolidsByKind,
  slackMm: number,
): Result<DroppedPieces, StackIssue> {
  const checked = checkLayout(pieces, solids);
  if (!checked.ok) return checked;

  const laidOut = checked.value.map((known, index) => ({ known, onTable: placePiece(known, index, 0) }));
  const neighbours = earlierNeighbours(
    laidOut.map(({ onTable }) => bodyBox(onTable.body)),
    0,
  );
  const placed: PlacedPiece[] = [];
  const supports: Support[] = [];
  const issues: StackIssue[] = [];
  for (const { known, onTable } of laidOut) {
    const { index } = onTable;
    const earlier = neighbours(index).flatMap((other) => placed[other] ?? []);
    const land = known.laid.on === 'table' ? standAmong : landOn;
    const landing = land(onTable, earlier, CONTACT_MM + slackMm);
    if ('depthMm' in landing) {
      const details = { other: landing.other, depthMm: landing.depthMm };
      issues.push({ code: 'overlaps', path: ['pieces', index, 'on'], details });
      placed.push(onTable);
    } else {
      supports.push(...landing.supports);
      placed.push(placePiece(known, index, landing.bottomMm));
    }
  }
  if (issues.length > 0) return failure(issues);
  return success({ pieces: placed, supports });
}
