// Numbers of the Kit screen as they are read.

import type { Ruler, Sizes, Solid, SolidSpec } from '@cairnmark/geometry';
import { definitionOf, MM_PER_CM, MM_PER_INCH } from '@cairnmark/geometry';
import type { BuildWords } from '../../app/use-build-words.ts';
import { numberAndUnit } from '../../parts/number-and-unit.ts';
import { pieceHeight } from '../../parts/piece-height.ts';
import { restingHeightMm } from './kind-picture.tsx';
import { writtenName } from './ways.ts';

/** A column of numbers has one count of decimals: tenths of cm² and cm³, hundredths of in³. */
export function columnsOf(solid: Solid, words: BuildWords) {
  const { inClass, ruler } = words;
  const lengthMm = ruler.unit === 'in' ? MM_PER_INCH : MM_PER_CM;
  const volumeStep = lengthMm ** 3 / (ruler.unit === 'in' ? 100 : 10);
  return {
    height: alone(pieceHeight(restingHeightMm(solid), words)),
    volume: alone(inClass.roundedAmount('volume', solid.volumeMm3, volumeStep)),
    paper: alone(inClass.roundedAmount('paper', solid.surfaceMm2, lengthMm ** 2 / 10)),
  };
}

/** Without the unit, which stands at the head of the column. */
const alone = (text: string): string => numberAndUnit(text).number;

/** "edge 5 cm, height 8 cm"; a number of sides is none of them. */
export function sizesInWords({ solid, sizes }: SolidSpec, { words, inClass }: BuildWords): string {
  const names: Readonly<Record<string, string>> = words.names.sizes;
  return definitionOf(solid)
    .fields.filter(({ unit }) => unit === 'mm')
    .map((field) => writtenName(field, sizes))
    .map(
      (name) =>
        `${names[name] ?? name} ${inClass.exact(tenths(sizes[name] ?? Number.NaN, inClass.unit('height').name), 'mm')}`,
    )
    .join(', ');
}

/** What was worked out is shown to a tenth of a mm: no ruler reads finer. Inches have their own fractions. */
export const tenths = (valueMm: number, unit: string | Ruler['unit']): number =>
  unit === 'in' ? valueMm : Math.round(valueMm * 10) / 10;

/** What a group's own sizes differ from the kit's, mm, in the terms of the solid; the same within a twentieth of a mm. */
export function differences(own: Sizes, kit: Sizes): readonly (readonly [name: string, byMm: number])[] {
  return Object.entries(own)
    .map(([name, value]) => [name, value - (kit[name] ?? value)] as const)
    .filter(([name, byMm]) => name !== 'sides' && Math.abs(byMm) >= SAME_MM);
}

const SAME_MM = 0.05;
