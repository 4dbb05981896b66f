// A stored value as it stands in a field for typing: the number alone, with the figures that its unit deserves.

import type { Ruler, Unit } from '@cairnmark/geometry';
import { inchReading, SIXTEENTH_MM } from './inches.ts';
import { isWhole, trimmed } from './numbers.ts';
import { factUnit } from './units.ts';

/** Decimals of what was measured elsewhere, or in other units; what was typed here has fewer. */
const MOST_DECIMALS = 3;

/** `mark`: the decimal point or comma. Inches stand as a fraction where they are one; a length has at least the ruler's decimals. */
export function typedText(value: number, unit: Unit, ruler: Ruler, mark: string): string {
  const shown = factUnit(unit, ruler);
  if (shown.name === 'in' && isWhole(value / SIXTEENTH_MM)) return inchReading(value, SIXTEENTH_MM);
  const least = unit === 'mm' && shown.name !== 'in' && !isWhole(ruler.stepMm / shown.size) ? 1 : 0;
  return trimmed(value / shown.size, least, MOST_DECIMALS, mark);
}
