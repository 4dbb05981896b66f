// What keeps the total of a build from being known. Leaving out a measurement must not beat measuring it.

import { requirementPoints } from '@cairnmark/scoring';
import type { Report } from '../report-types.ts';
import type { Challenge } from '../types.ts';
import { countsItsOwn } from './fallen.ts';

/** Measures by which the build may have lost points, and that were not measured; each once. */
export function unmeasuredLosses(report: Report, challenge: Challenge): readonly string[] {
  if (!countsItsOwn(report, challenge)) return [];
  const rows = report.points.filter(({ points }) => points === null);
  const rules = report.requirements.filter((line) => requirementPoints(line) === null);
  return [...new Set([...rows, ...rules].flatMap(({ measure }) => measure ?? []))];
}
