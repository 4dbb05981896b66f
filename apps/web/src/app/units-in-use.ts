// The units that lengths are shown in: those chosen on this device, else those of the ruler of the class. Kept apart from
// the rulers themselves, which are not loaded at the start.

import type { RulerId } from '@cairnmark/geometry';
import type { Units } from '../store/device.ts';

/** `ruler`: of the class; null: no class is open. */
export function unitsInUse(chosen: Units | null, ruler: RulerId | null): Units | null {
  if (chosen !== null || ruler === null) return chosen;
  return ruler.endsWith('inch') ? 'in' : 'cm';
}
