// One more piece under a tower, from the top down: a joint depends only on what is above it, so that a joint which gives
// way rules out all that could go below. Statics of rigid bodies, every centre of mass on one upright line.

import type { Prepared, WayOf } from './prepared.ts';
import { SAME_VALUE, WHOLE_MM } from './tolerance.ts';
import type { WayUp } from './types.ts';

/** What is placed so far, its lowest piece first. */
export interface Placed {
  readonly way: WayOf;
  readonly above: Placed | null;
  readonly count: number;
  readonly heightMm: number;
  readonly massG: number;
  /** Sum of mass times height over the underside, g mm. */
  readonly moment: number;
  /** The least push that tips one of the joints inside it; infinite for one piece. */
  readonly tipsPush: number;
  /** The least push that lets one of these joints slide. */
  readonly slidesPush: number;
}

/** null: the way cannot be put under it, or no tower that goes on so bears the push that is asked. */
export function placeUnder(above: Placed | null, way: WayOf, { task, gripBetween }: Prepared): Placed | null {
  const onTop = above === null ? NOTHING : jointOf(above, way, gripBetween(above.way.kind, way.kind));
  if (onTop === null || Math.min(onTop.tips, onTop.slides) < task.pushAtLeast * (1 - SAME_VALUE)) return null;
  const massG = (above?.massG ?? 0) + way.massG;
  const moment =
    (above === null ? 0 : above.moment + above.massG * way.up.heightMm) + way.massG * way.up.centreHeightMm;
  // The next joint bears no more than the whole underside would.
  if ((way.up.bottomInsideMm * massG) / moment < task.pushAtLeast * (1 - SAME_VALUE)) return null;
  return {
    way,
    above,
    count: (above?.count ?? 0) + 1,
    heightMm: (above?.heightMm ?? 0) + way.up.heightMm,
    massG,
    moment,
    tipsPush: Math.min(above?.tipsPush ?? Number.POSITIVE_INFINITY, onTop.tips),
    slidesPush: Math.min(above?.slidesPush ?? Number.POSITIVE_INFINITY, onTop.slides),
  };
}

/** The pushes that tip and slide it when it stands on the table. */
export function onTable(placed: Placed, { gripOnTable }: Prepared): { readonly tips: number; readonly stands: number } {
  const tips = Math.min(placed.tipsPush, (placed.way.up.bottomInsideMm * placed.massG) / placed.moment);
  return { tips, stands: Math.min(tips, placed.slidesPush, gripOnTable(placed.way.kind)) };
}

const NOTHING = { tips: Number.POSITIVE_INFINITY, slides: Number.POSITIVE_INFINITY };

/** The joint of what is above and a piece below. push = distance / height of the centre of mass. */
function jointOf(above: Placed, { up, carries }: WayOf, slides: number): { tips: number; slides: number } | null {
  if (!carries) return null;
  return { tips: (insideBoth(above.way.up, up) * above.massG) / above.moment, slides };
}

/**
 * The common part of two faces that both hold the line is left soonest over the nearer of their edges, however one is turned
 * against the other. A round face that lies wholly on the other has its true rim.
 */
export function insideBoth(upper: WayUp, lower: WayUp): number {
  const [down, up] = [upper.bottomInsideMm, lower.topInsideMm];
  if (upper.bottomClippedMm < down && down <= up + WHOLE_MM) return down;
  if (lower.topClippedMm < up && up <= down + WHOLE_MM) return up;
  return Math.min(upper.bottomClippedMm, lower.topClippedMm);
}
