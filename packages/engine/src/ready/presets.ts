// What a grade sees and measures with until the teacher says otherwise: the ruler, the pi, and which measures are hidden.

import type { RulerId } from '@cairnmark/geometry';
import { MEASURES } from '@cairnmark/geometry';
import type { ClassPi, GradePreset } from '../types.ts';

export interface Preset {
  readonly ruler: RulerId;
  readonly pi: ClassPi;
  readonly hidden: readonly string[];
}

export function presetOf(grade: GradePreset): Preset {
  const { ruler, pi, shown } = PRESETS[grade];
  return { ruler, pi, hidden: MEASURES.map(({ id }) => id).filter((id) => shown !== 'all' && !shown.includes(id)) };
}

/** As fine as the grade reads, in the units that its rulers have. */
export const rulerFor = (grade: GradePreset, units: 'cm' | 'in'): RulerId =>
  units === 'cm' ? PRESETS[grade].ruler : INCHES[grade];

const EARLY: readonly string[] = ['height', 'pieces', 'kinds', 'faces', 'edges', 'corners', 'flat-faces'];
const MIDDLE: readonly string[] = [
  ...EARLY,
  'curved-surfaces',
  'footprint-area',
  'footprint-perimeter',
  'base-area',
  'base-perimeter',
  'courtyard-area',
  'volume',
];

const PRESETS: Readonly<
  Record<GradePreset, { readonly ruler: RulerId; readonly pi: ClassPi; readonly shown: readonly string[] | 'all' }>
> = {
  'grades-2-3': { ruler: 'cm', pi: '3', shown: EARLY },
  'grades-4-5': { ruler: 'half-cm', pi: '3.14', shown: MIDDLE },
  'grades-6-8': { ruler: 'mm', pi: 'key', shown: 'all' },
};

/** Whole inches, fourths (3.MD.B.4, NGA and CCSSO 2010), then as fine as rulers are. */
const INCHES: Readonly<Record<GradePreset, RulerId>> = {
  'grades-2-3': 'inch',
  'grades-4-5': 'quarter-inch',
  'grades-6-8': 'sixteenth-inch',
};
