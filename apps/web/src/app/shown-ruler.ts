// The ruler that numbers are shown with on this device.

import type { Ruler, RulerId } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { Units } from '../store/device.ts';

/** The class's own, or the finest of the other kind. Sizes are never changed by it. */
export function shownRuler(id: RulerId, units: Units | null): Ruler {
  const own = rulerOf(id);
  const shown = units ?? (own.unit === 'in' ? 'in' : 'cm');
  if (shown === 'in') return own.unit === 'in' ? own : rulerOf('sixteenth-inch');
  // Millimetres are the divisions of a ruler that is numbered in centimetres.
  const metric = own.unit === 'in' ? rulerOf('mm') : own;
  return { ...metric, unit: 'cm' };
}
