// What the points of one build are made of: its rows, kept and broken rules, own results, points by hand. The parts add
// up to its total.

import type { Challenge, Report } from '@cairnmark/engine';
import { exactSum } from '@cairnmark/scoring';

/** `row:` with the id of a row of the points table; `stated`: set for a build that fell, in place of all that it earned. */
export type PartId = `row:${string}` | 'rules' | 'own' | 'by-hand' | 'stated';

export interface Part {
  readonly id: PartId;
  readonly points: number;
}

/** Parts without points are left out. Empty for a build of which nothing counts. */
export function partsOf(report: Report, challenge: Challenge): readonly Part[] {
  if (report.total === null) return [];
  const byHand: Part = { id: 'by-hand', points: exactSum(report.adjustments.map(({ points }) => points)) };
  const { fallen } = challenge;
  const earned: readonly Part[] =
    report.state.kind !== 'stood' && fallen.counts === 'points'
      ? [{ id: 'stated', points: fallen.points }]
      : earnedParts(report);
  return [...earned, byHand].filter(({ points }) => points !== 0);
}

const earnedParts = ({ points, requirements, own }: Report): readonly Part[] => [
  ...points.map((line): Part => ({ id: `row:${line.row}`, points: line.points ?? 0 })),
  { id: 'rules', points: exactSum(requirements.map(ruleReturns)) },
  { id: 'own', points: exactSum(own.map((line) => line.points)) },
];

function ruleReturns({ verdict, consequence }: Report['requirements'][number]): number {
  if (consequence.kind === 'costs' && verdict === 'broken') return -consequence.points;
  return consequence.kind === 'earns' && verdict === 'kept' ? consequence.points : 0;
}
