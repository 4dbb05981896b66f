// Slips of the ruler that a typed size gives away: it is just what another way of measuring shows on the piece as it was.
// Nothing is mended by itself: the screen asks. Lengths mm.

import type { Ruler, SizeWay, SolidSpec } from '@cairnmark/geometry';
import { definitionOf, MM_PER_CM, MM_PER_INCH, makeSolid } from '@cairnmark/geometry';
import { shownBy, sizeBy, waysOf, writtenName } from './ways.ts';

export type DoubtCode =
  /** It is as long as the slope. */
  | 'slope'
  /** It is as wide as the whole circle, in place of a radius. */
  | 'across'
  /** It is half as wide, in place of a diameter. */
  | 'half'
  /** It is ten times what it was: mm typed for cm. */
  | 'ten-times'
  /** It is 25.4 times what it was: mm typed for inches. */
  | 'inch-times';

export interface Doubt {
  readonly code: DoubtCode;
  /** The size as it is written in the kit. */
  readonly name: string;
  readonly typedMm: number;
  /** What the size is if the doubt is right. */
  readonly meantMm: number;
  /** The slope, where it is one. */
  readonly way: SizeWay | null;
}

/** `spec`: the piece as it is known. `unit`: in which lengths are typed. null: nothing to ask. */
export function doubtOf(spec: SolidSpec, name: string, typedMm: number, unit: Ruler['unit']): Doubt | null {
  const made = makeSolid(spec);
  const before = spec.sizes[name];
  if (!made.ok || before === undefined || near(typedMm, before)) return null;
  const ask = (code: DoubtCode, meantMm: number, way: SizeWay | null = null): Doubt => ({
    code,
    name,
    typedMm,
    meantMm,
    way,
  });
  const times = unit === 'in' ? MM_PER_INCH : MM_PER_CM;
  if (Math.abs(typedMm / before / times - 1) < TIMES_SLACK)
    return ask(unit === 'in' ? 'inch-times' : 'ten-times', typedMm / times);
  const field = definitionOf(spec.solid).fields.find((one) => writtenName(one, spec.sizes) === name);
  if (field?.otherwise.includes('diameter') === true || field?.otherwise.includes('topDiameter') === true) {
    if (name === field.name && near(typedMm, 2 * before)) return ask('across', typedMm / 2);
    if (name !== field.name && near(typedMm, before / 2)) return ask('half', typedMm * 2);
  }
  if (name !== 'height') return null;
  const slope = waysOf(spec).find((way) => way.kind === 'slope' && near(typedMm, shownBy(way, made.value.sizes)));
  const meantMm = slope === undefined ? Number.NaN : sizeBy(spec, slope, typedMm);
  return slope === undefined || !Number.isFinite(meantMm) ? null : ask('slope', meantMm, slope);
}

/** mm. Two readings of one paper edge differ by no more: a pencil line's width either way, and a little. */
const SAME_READING_MM = 1.5;
/** No unit. A piece measured anew is off by a twentieth at most. */
const TIMES_SLACK = 0.05;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_READING_MM;
