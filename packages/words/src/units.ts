// From the engine's units (mm, mm2, mm3, count, ratio, rad, s) to those of the class's ruler: a length in mm, cm or inches, areas in
// cm2 or in2, volumes in cm3 or in3. A quotient of two amounts has a unit of both: cm3 per cm2.

import type { Ruler, Unit } from '@cairnmark/geometry';

/** Exact by definition (international inch). */
const MM_PER_INCH = 25.4;
const MM_PER_CM = 10;

export interface ShownUnit {
  /** As written after the number. */
  readonly name: string;
  /** One of it, in the engine's unit. */
  readonly size: number;
}

/** One amount for each of another: its units, and the word between them. */
export interface Quotient {
  readonly over: Unit;
  readonly under: Unit;
  readonly per: string;
}

/** The unit in which a class with this ruler reads facts. */
export function factUnit(unit: Unit | Quotient, ruler: Ruler): ShownUnit {
  if (typeof unit !== 'string') return quotientUnit(unit, ruler);
  if (unit === 'mm' && ruler.unit === 'mm') return { name: 'mm', size: 1 };
  return workingUnit(unit, ruler);
}

/** The unit of a calculation: cm where the ruler reads mm, so that cm x cm gives cm2 and a pupil can check it. */
export function workingUnit(unit: Unit, ruler: Ruler): ShownUnit {
  const inches = ruler.unit === 'in';
  const length = inches ? MM_PER_INCH : MM_PER_CM;
  const name = inches ? 'in' : 'cm';
  switch (unit) {
    case 'mm':
      return { name, size: length };
    case 'mm2':
      return { name: `${name}²`, size: length ** 2 };
    case 'mm3':
      return { name: `${name}³`, size: length ** 3 };
    case 'rad':
      return { name: '°', size: Math.PI / 180 };
    case 's':
      return { name: 's', size: 1 };
    case 'count':
    case 'ratio':
      return { name: '', size: 1 };
  }
}

function quotientUnit({ over, under, per }: Quotient, ruler: Ruler): ShownUnit {
  const [above, below] = [workingUnit(over, ruler), workingUnit(under, ruler)];
  return { name: `${above.name}${per}${below.name}`, size: above.size / below.size };
}

/** Number and unit together: a degree sign stands close, a count stands alone. */
export function withUnit(number: string, unit: ShownUnit): string {
  if (unit.name === '') return number;
  return unit.name === '°' ? `${number}°` : `${number} ${unit.name}`;
}
