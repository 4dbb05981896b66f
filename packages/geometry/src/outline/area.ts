// The area of one outline; mm2.

import type { Outline } from '../kernel/outline.ts';
import { signedAreaMm2 } from '../kernel/polygon.ts';

/** The area of an outline that does not cross itself, whichever way its corners run; mm2. */
export function outlineAreaMm2(outline: Outline): number {
  return outline.kind === 'disc' ? Math.PI * outline.radiusMm ** 2 : Math.abs(signedAreaMm2(outline.points));
}
