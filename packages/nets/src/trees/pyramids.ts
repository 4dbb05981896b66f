// Pyramids. To four sides a star, all sides around the base, and a fan around the apex only on a page too small for the
// star; from five sides on whichever needs the smaller page. A very low pyramid would close its fan nearly to a full turn,
// with no room for the last tab: it is a star. Open at the base it is a fan. Faces: 0 the base, then the sides from the
// front.

import type { Vec2 } from '@cairnmark/geometry';
import { cross2, dot2, sub2 } from '@cairnmark/geometry';
import { LEAST_FAN_GAP_RAD } from '../tolerance.ts';
import type { FaceTable } from '../unfold/faces.ts';
import { commonSide } from '../unfold/faces.ts';
import type { Joint, Tree } from '../unfold/unfold.ts';
import { from, strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

export const pyramid: NetRecipe = {
  kind: 'faces',
  usual: (table) => [starOf(table), ...(sidesOf(table).length > 4 ? fansOf(table) : [])],
  spare: (table) => (sidesOf(table).length > 4 ? [] : fansOf(table)),
  open: (table) => [strip(table, sidesOf(table), [])],
};

const sidesOf = ({ faces }: FaceTable): readonly number[] => from(1, faces.length - 1);

const starOf = (table: FaceTable): Tree => ({ joints: sidesOf(table).map((side): Joint => [0, side]) });

function fansOf(table: FaceTable): readonly Tree[] {
  const sides = sidesOf(table);
  return fanHasRoom(table, sides) ? [strip(table, sides, [0])] : [];
}

/** Whether sides laid side by side, round the point where they meet or would meet, leave a gap for a tab. */
export function fanHasRoom(table: FaceTable, sides: readonly number[]): boolean {
  const turns = sides.map((side) => turnOf(table, side));
  return 2 * Math.PI - turns.reduce((sum, turn) => sum + turn, 0) >= LEAST_FAN_GAP_RAD;
}

/** The angle between the two slanting sides of a side face: those next to the one on the base. */
function turnOf(table: FaceTable, face: number): number {
  const ring = table.faces[face]?.ring ?? [];
  const onBase = commonSide(table, face, 0) ?? 0;
  const corner = (k: number): Vec2 => ring[(onBase + k + ring.length) % ring.length] ?? [0, 0];
  const [right, left] = [sub2(corner(2), corner(1)), sub2(corner(-1), corner(0))];
  return Math.atan2(cross2(left, right), dot2(left, right));
}
