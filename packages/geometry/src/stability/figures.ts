// Margins as they are shown: as a tilt of the table and as a sideways push.

import type { Vec2 } from '../kernel/vec.ts';
import { unsigned2 } from '../kernel/vec.ts';
import type { Joint } from './recursion.ts';
import type { Margin } from './types.ts';

export interface Tilt {
  /** Tilt of the table, rad. */
  readonly tiltRad: number;
  /** The same as a sideways push, in shares of the weight: the tangent of the tilt. */
  readonly push: number;
  /** Unit vector in plan: downhill, the way the push acts. */
  readonly direction: Vec2;
}

/** What one joint of a tower bears. */
export interface JointMargin {
  readonly upper: number;
  readonly lower: number | 'table';
  readonly tipsAt: Tilt;
  readonly slidesAtRad: number;
  /** How far the common centre of mass of all above lies inside the nearest edge, mm; negative when it hangs over. */
  readonly insideMm: number;
}

export function tiltOf(margin: Margin | null): Tilt | null {
  return margin && tilt(margin);
}

export function jointMargin({ patch, tips, insideMm }: Joint): JointMargin {
  const { upper, lower, friction } = patch;
  return { upper, lower, tipsAt: tilt(tips), slidesAtRad: Math.atan(friction), insideMm };
}

const tilt = ({ push, direction }: Margin): Tilt => ({
  tiltRad: Math.atan(push),
  push,
  direction: unsigned2(direction),
});
