// The lines of a score card: first what earns points in this challenge, hidden or not, then what was measured besides, and
// apart from both what the class is not shown or what has no number.

import type { Challenge, OwnLine, Report, ReportedFact } from '@cairnmark/engine';
import { isShown, SETS_ID } from '@cairnmark/engine';
import type { PointsLine, PointsRow } from '@cairnmark/scoring';
import { sumIfKnown } from '@cairnmark/scoring';

export interface ScoreLine {
  /** Id of the measure. */
  readonly id: string;
  /** null: the report knows nothing of it. */
  readonly fact: ReportedFact | null;
  readonly rows: readonly { readonly row: PointsRow; readonly line: PointsLine }[];
  readonly own: OwnLine | null;
  /** Does it earn points in this challenge? */
  readonly scores: boolean;
  /** Of its rows and of the own result; null: not known, since it may take points and was not measured. */
  readonly points: number | null;
}

export interface ScoreLines {
  readonly scoring: readonly ScoreLine[];
  readonly also: readonly ScoreLine[];
  readonly rest: readonly ScoreLine[];
}

export function scoreLines(report: Report, challenge: Challenge): ScoreLines {
  const scoringIds = scoringMeasures(challenge);
  const others = report.facts.map(({ id }) => id).filter((id) => !scoringIds.includes(id));
  const shown = others.filter((id) => isShown(id, challenge) && isTold(id, report));
  const line = (id: string): ScoreLine => lineOf(id, report, challenge, scoringIds.includes(id));
  return {
    scoring: scoringIds.map(line),
    also: shown.map(line),
    rest: others.filter((id) => !shown.includes(id)).map(line),
  };
}

/** In the order of the points table; then measures of which only the own result earns. */
const scoringMeasures = ({ points, own }: Challenge): readonly string[] => [
  ...new Set([...points, ...own.rewards].map(({ measure }) => measure)),
];

/** Counts of single kinds and of full sets tell of the kit, not of the build; what has no number has no line of its own. */
const isTold = (id: string, { facts }: Report): boolean =>
  !id.startsWith('kind:') && id !== SETS_ID && facts.some((fact) => fact.id === id && fact.value !== null);

function lineOf(id: string, report: Report, challenge: Challenge, scores: boolean): ScoreLine {
  const rows = challenge.points
    .filter(({ measure }) => measure === id)
    .flatMap((row) => report.points.filter((line) => line.row === row.id).map((line) => ({ row, line })));
  const own = report.own.find(({ measure }) => measure === id) ?? null;
  const points = sumIfKnown([...rows.map(({ line }) => line.points), own?.points ?? 0]);
  const fact = report.facts.find((one) => one.id === id) ?? null;
  return { id, fact, rows, own, scores, points };
}
