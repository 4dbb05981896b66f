// The units that may be typed behind a number, the one that is shown first.

import type { Ruler, Unit } from '@cairnmark/geometry';
import type { WrittenUnit } from './length-text.ts';

/** `ruler`: as lengths are shown on this device; areas and volumes follow it. */
export function writtenUnits(unit: Unit, ruler: Ruler): readonly WrittenUnit[] {
  switch (unit) {
    case 'mm':
      return shownFirst(LENGTHS, ruler.unit);
    case 'mm2':
      return shownFirst(AREAS, ruler.unit === 'in' ? 'in²' : 'cm²');
    case 'mm3':
      return shownFirst(VOLUMES, ruler.unit === 'in' ? 'in³' : 'cm³');
    case 'rad':
      return [{ ...PLAIN, name: '°', over: Math.PI, under: 180 }];
    case 's':
      return [{ ...PLAIN, name: 's', alsoWritten: ['sec', 'seconds', 'seg', 'segundos'] }];
    case 'count':
    case 'ratio':
      return [PLAIN];
  }
}

const PLAIN: WrittenUnit = { name: '', alsoWritten: [], over: 1, under: 1, fractions: false };

const LENGTHS: readonly WrittenUnit[] = [
  { ...PLAIN, name: 'cm', over: 10 },
  { ...PLAIN, name: 'mm' },
  {
    name: 'in',
    alsoWritten: ['"', 'in.', 'inch', 'inches', 'pulg', 'pulg.', 'pulgada', 'pulgadas'],
    over: 127,
    under: 5,
    fractions: true,
  },
];

const AREAS: readonly WrittenUnit[] = [
  { ...PLAIN, name: 'cm²', over: 100 },
  { ...PLAIN, name: 'mm²' },
  { ...PLAIN, name: 'in²', over: 127 ** 2, under: 25 },
];

const VOLUMES: readonly WrittenUnit[] = [
  { ...PLAIN, name: 'cm³', over: 1000 },
  { ...PLAIN, name: 'mm³' },
  { ...PLAIN, name: 'in³', over: 127 ** 3, under: 125 },
];

const shownFirst = (units: readonly WrittenUnit[], name: string): readonly WrittenUnit[] => [
  ...units.filter((unit) => unit.name === name),
  ...units.filter((unit) => unit.name !== name),
];
