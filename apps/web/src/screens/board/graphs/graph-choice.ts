// Which graphs a grade reads, and how fine. After the Common Core State Standards for mathematics: line plots in whole units
// (2.MD.D.9), halves and quarters (3.MD.B.4), eighths (5.MD.B.2); bar graphs of at most four categories with a scale in ones
// (2.MD.D.10), scaled ones (3.MD.B.3); points in a grid (5.G.A.2), read as a scatter plot later (8.SP.A.1); box plots (6.SP.B.4).

import type { GradePreset } from '@cairnmark/engine';
import type { Ruler } from '@cairnmark/geometry';
import { MM_PER_CM, MM_PER_INCH } from '@cairnmark/geometry';

export interface GraphChoice {
  /** First try against best. */
  readonly tries: boolean;
  readonly scatter: boolean;
  readonly box: boolean;
  /** Of the bar graph; null: as many as there are. */
  readonly barsMost: number | null;
  /** The bar graph counts in ones. */
  readonly inOnes: boolean;
}

export const graphsFor = (preset: GradePreset): GraphChoice => CHOICES[preset];

/** The finest division of a line plot of lengths, mm: that of the ruler, or what the grade reads where that is coarser. */
export function finestDivisionMm({ stepMm, unit }: Ruler, preset: GradePreset): number {
  const grade = unit === 'in' ? MM_PER_INCH / INCH_PARTS[preset] : METRIC_MM[preset];
  return Math.max(stepMm, grade);
}

const CHOICES: Readonly<Record<GradePreset, GraphChoice>> = {
  'grades-2-3': { tries: false, scatter: false, box: false, barsMost: 4, inOnes: true },
  'grades-4-5': { tries: true, scatter: true, box: false, barsMost: null, inOnes: false },
  'grades-6-8': { tries: true, scatter: true, box: true, barsMost: null, inOnes: false },
};

const INCH_PARTS: Readonly<Record<GradePreset, number>> = { 'grades-2-3': 4, 'grades-4-5': 8, 'grades-6-8': 16 };

/** Whole cm for the youngest; for the others any division of a metric ruler (common practice, no source). */
const METRIC_MM: Readonly<Record<GradePreset, number>> = { 'grades-2-3': MM_PER_CM, 'grades-4-5': 1, 'grades-6-8': 1 };
