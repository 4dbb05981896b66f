// The large number of a card: the points, or, where nothing can earn points, the value that decides the ranking.

import type { Challenge, Report, ReportedFact } from '@cairnmark/engine';

/** null: points are what this challenge is about. */
export function headlineFact(
  report: Report,
  { points, requirements, own, fallen, ranking }: Challenge,
): ReportedFact | null {
  const earns =
    points.length > 0 ||
    own.rewards.length > 0 ||
    fallen.counts === 'points' ||
    report.adjustments.length > 0 ||
    requirements.some(({ consequence }) => consequence.kind !== 'must');
  if (earns) return null;
  return report.facts.find(({ id, value }) => id === ranking.first.by && value !== null) ?? null;
}
