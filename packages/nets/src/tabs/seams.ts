// The seams of a net: every edge of the solid that is cut, with its two sides on the rims of the sheets. One of the two
// gets the tab, the other is glued over it.

import { leftOf } from '../plane/convex.ts';
import { DEEPEST_SHARE } from '../tolerance.ts';
import type { RimSide } from '../unfold/boundary.ts';
import { rimOf } from '../unfold/boundary.ts';
import type { FaceTable } from '../unfold/faces.ts';
import { commonSide } from '../unfold/faces.ts';
import type { Sheet } from '../unfold/unfold.ts';
import { sideOf } from '../unfold/unfold.ts';

/** A place on the rim of a sheet. */
export interface Copy extends RimSide {
  readonly sheet: number;
  readonly position: number;
  /** No tab on it is deeper: a share of the edge, and of what the mate has across that edge. */
  readonly deepestMm: number;
}

export type Seam = readonly [Copy, Copy];

export interface Seams {
  readonly rims: readonly (readonly Copy[])[];
  /** Each seam with the side first whose mate follows sooner round the rim, so that like places are treated alike. */
  readonly seams: readonly Seam[];
}

export function seamsOf(table: FaceTable, sheets: readonly Sheet[]): Seams {
  const rims = sheets.map((sheet, k) =>
    rimOf(table, sheet).map((side, position): Copy => {
      return { ...side, sheet: k, position, deepestMm: DEEPEST_SHARE * acrossMm(table, side) };
    }),
  );
  const copies = new Map(rims.flat().map((copy) => [keyOf(copy.face, copy.mate), copy]));
  const seams = rims.flat().flatMap((copy): Seam[] => {
    const mate = copies.get(keyOf(copy.mate, copy.face));
    // A face that lies on no sheet was left out: its edges stay open.
    if (mate === undefined) return [];
    return isFirst(copy, mate, rims[copy.sheet]?.length ?? 0) ? [[copy, mate]] : [];
  });
  return { rims, seams };
}

export const keyOf = (face: number, mate: number): string => `${face} ${mate}`;

function isFirst(copy: Copy, mate: Copy, around: number): boolean {
  if (copy.sheet !== mate.sheet) return copy.sheet < mate.sheet;
  const [ahead, behind] = [mate.position - copy.position, copy.position - mate.position].map(
    (steps) => (steps + around) % around,
  );
  return ahead === behind ? copy.position < mate.position : (ahead ?? 0) < (behind ?? 0);
}

/** The edge, or how far the mate reaches across it where that is less. */
function acrossMm(table: FaceTable, { face, mate, a, b }: RimSide): number {
  const ring = table.faces[mate]?.ring ?? [];
  const [from, to] = sideOf(ring, commonSide(table, mate, face) ?? 0);
  const reachMm = Math.max(...ring.map((corner) => leftOf(from, to, corner)));
  return Math.min(reachMm, Math.hypot(b[0] - a[0], b[1] - a[1]));
}
