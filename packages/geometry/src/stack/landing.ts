// Where a piece comes to rest: dropped onto what is below it, or put on the table beside and under what is there.
// Pieces are handed in standing on the table (bottomMm 0). Frame of the table, mm.

import { CONTACT_MM, SIDE_BY_SIDE_MM } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Drop } from './drop-height.ts';
import { dropHeight } from './drop-height.ts';
import { planOverlapDepth } from './plan-overlap.ts';
import type { PlacedPiece, Support } from './types.ts';

export interface Landing {
  readonly bottomMm: number;
  readonly supports: readonly Support[];
}

/** Another piece in the way, and how deep the two overlap, mm. */
export interface Clash {
  readonly other: number;
  readonly depthMm: number;
}

/**
 * The highest place at which `piece`, coming straight down, meets one of `below` or the table, and all that it rests on
 * there: what comes within `reachMm` of it, but for gaps that a thin piece under it fills. `below` is looked through in order: quickest with the highest first.
 */
export function landOn(piece: PlacedPiece, below: readonly PlacedPiece[], reachMm: number): Landing {
  let bottomMm = TABLE.heightMm;
  const met: Footing[] = [TABLE];
  for (const lower of below) {
    if (lower.topMm < bottomMm - reachMm || standSideBySide(piece, lower)) continue;
    const drop = dropHeight(piece.body, lower.body);
    if (drop === null) continue;
    bottomMm = Math.max(bottomMm, drop.heightMm);
    met.push({ lower: lower.index, heightMm: drop.heightMm, normal: drop.normal });
  }
  const gapMm = ({ heightMm }: Footing): number => bottomMm - heightMm;
  const touched = new Set(met.filter((footing) => gapMm(footing) <= CONTACT_MM).map(({ lower }) => lower));
  const holders = below.filter(({ index }) => touched.has(index));
  const carrying = met.filter(
    (footing) => gapMm(footing) <= reachMm && !holders.some((holder) => fills(holder, footing, gapMm(footing), below)),
  );
  return { bottomMm, supports: carrying.map((footing) => support(piece.index, footing, bottomMm)) };
}

/**
 * Puts `piece` on the table among `others`: the one of them that it overlaps deepest, by more than a contact's width, or else
 * what it rests on and what now rests on it, each within `reachMm`.
 */
export function standAmong(piece: PlacedPiece, others: readonly PlacedPiece[], reachMm: number): Clash | Landing {
  const supports: Support[] = [support(piece.index, TABLE, 0)];
  let clash: Clash | null = null;
  for (const other of others) {
    if (other.bottomMm > piece.topMm + reachMm || standSideBySide(piece, other)) continue;
    const over = dropHeight(piece.body, other.body);
    const under = dropHeight(other.body, piece.body);
    if (over === null || under === null) continue;
    const depthMm = Math.min(planOverlapDepth(piece.outline, other.outline), depth(over), depth(under));
    if (depthMm > (clash?.depthMm ?? CONTACT_MM)) clash = { other: other.index, depthMm };
    if (touches(over, reachMm)) supports.push(support(piece.index, { lower: other.index, ...over }, 0));
    if (touches(under, reachMm)) supports.push(support(other.index, { lower: piece.index, ...under }, 0));
  }
  return clash ?? { bottomMm: 0, supports };
}

/** What a piece can rest on: at which height of its lowest point, and with which normal. */
interface Footing {
  readonly lower: Support['lower'];
  readonly heightMm: number;
  readonly normal: Vec3;
}

const TABLE: Footing = { lower: 'table', heightMm: 0, normal: [0, 0, 1] };

/**
 * True when the gap over a footing is there because `holder` lies in it: as wide as that is thick, and that over the
 * footing. Such a gap is no error of measured sizes.
 */
function fills(holder: PlacedPiece, { lower }: Footing, gapMm: number, below: readonly PlacedPiece[]): boolean {
  if (gapMm < Math.max(holder.topMm - holder.bottomMm - CONTACT_MM, CONTACT_MM)) return false;
  const under = below.find(({ index }) => index === lower);
  return under === undefined || !standSideBySide(holder, under);
}

const support = (upper: number, { lower, heightMm, normal }: Footing, bottomMm: number): Support => ({
  upper,
  lower,
  normal,
  closedMm: Math.max(0, bottomMm - heightMm),
});

const standSideBySide = (a: PlacedPiece, b: PlacedPiece): boolean =>
  planOverlapDepth(a.outline, b.outline) <= SIDE_BY_SIDE_MM;

/** How deep the two overlap along the contact normal; negative when the upper one is clear of the lower. */
const depth = (drop: Drop): number => drop.heightMm * drop.normal[2];

/** True when the upper one, where it is now, lies on the lower: no gap beyond the reach, no overlap beyond a contact's width. */
const touches = (drop: Drop, reachMm: number): boolean => -drop.heightMm <= reachMm && depth(drop) <= CONTACT_MM;
