// From the bare figures to what may be said of a build. Paper bends, tables shake and hands are no rulers: close to the
// edge, on either side of it, the answer is "too close to call".

import { NO_MARGIN_RAD } from '../kernel/tolerance.ts';
import type { Judgement } from './judge.ts';

/**
 * 'needs-solver': it stands, but how far takes a linear solver and none is loaded.
 * 'not-decided': the work limits cut the search off.
 */
export type Verdict =
  | 'steady'
  | 'wobbly'
  | 'too-close-to-call'
  | 'falls'
  | 'rolls-at-a-touch'
  | 'not-predicted'
  | 'needs-solver'
  | 'not-decided';

/** Tilts of the table, rad, that part the words. Common practice of the classroom, no source. */
export const CLOSE_RAD = (3 * Math.PI) / 180;
export const STEADY_RAD = (10 * Math.PI) / 180;

/** The same together, for those who put a verdict into words. */
export const TILT_BANDS = { closeRad: CLOSE_RAD, steadyRad: STEADY_RAD } as const;

export interface Circumstances {
  /** True when the statics do not hold for some piece. */
  readonly unpredictable: boolean;
  /** True when a piece that gives way first touches with a curved surface. */
  readonly rolls: boolean;
  /** True when the build falls, but a move within one division of the ruler would hold it. */
  readonly nearlyHeld: boolean;
  readonly solverLoaded: boolean;
}

export function verdictOf({ stands, standsTo }: Judgement, circumstances: Circumstances): Verdict {
  if (circumstances.unpredictable) return 'not-predicted';
  if (stands === null) return 'not-decided';
  if (!stands) return circumstances.nearlyHeld ? 'too-close-to-call' : 'falls';
  if (standsTo === null) return circumstances.solverLoaded ? 'not-decided' : 'needs-solver';
  const tiltRad = Math.atan(standsTo.push);
  if (tiltRad <= NO_MARGIN_RAD && circumstances.rolls) return 'rolls-at-a-touch';
  if (tiltRad < CLOSE_RAD) return 'too-close-to-call';
  return tiltRad < STEADY_RAD ? 'wobbly' : 'steady';
}
