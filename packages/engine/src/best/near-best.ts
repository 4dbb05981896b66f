// How near a build comes to the best possible one, as pupils are told it: a part of the whole and never the number, which
// would give the tower away.

import type { BestAnswer } from '@cairnmark/scoring';
import { exactSum } from '@cairnmark/scoring';
import { TILT_ID } from '../facts/ids.ts';
import type { Report } from '../report-types.ts';
import type { BestPlan } from './best-plan.ts';

export interface NearBest {
  /** Rounded down. More than 100 where only centred towers were looked at. */
  readonly percent: number;
  /** Told in steps of 5: of few pieces the exact number nearly gives the tower away. */
  readonly about: boolean;
  /** It is better than the best tower, by more than an error of measuring. */
  readonly over: boolean;
}

/** Pieces up to which the part is told in steps. */
const FEW = 6;
const STEP_PERCENT = 5;

/**
 * null: there is no best build to go by, or this one did not stand, keeps not to a rule that the best one keeps, or was not
 * measured.
 */
export function nearBest(report: Report, { task, takenAsMust }: BestPlan, answer: BestAnswer): NearBest | null {
  // Rules that only cost or earn points were kept in the search too: a build that breaks one may well have more.
  const isOut = report.requirements.some(
    ({ requirement, verdict, consequence }) =>
      verdict === 'broken' && (consequence.kind === 'must' || takenAsMust.includes(requirement)),
  );
  if (answer.kind !== 'best' || report.state.kind !== 'stood' || isOut) return null;
  const reached = reachedOf(report, task.goal);
  const best = task.goal.kind === 'greatest-tilt' ? Math.atan(answer.value) : answer.value;
  if (reached === null || reached.value < 0 || best <= 0) return null;
  const stock = task.kinds.reduce((sum, kind) => sum + kind.stock, 0);
  const about = Math.min(task.pieces.most, stock) <= FEW;
  const step = about ? STEP_PERCENT : 1;
  const percent = Math.floor((100 * reached.value) / best / step + ROUNDING) * step;
  const most = answer.scope === 'any' ? 100 : Number.POSITIVE_INFINITY;
  return {
    percent: Math.min(percent, most),
    about,
    over: answer.scope === 'centred' && reached.value - reached.tolerance > best * (1 + ROUNDING),
  };
}

/** No unit. Of a quotient that should be whole: far below a hundredth of a percent. */
const ROUNDING = 1e-9;

interface Reached {
  readonly value: number;
  readonly tolerance: number;
}

function reachedOf(report: Report, goal: BestPlan['task']['goal']): Reached | null {
  if (goal.kind === 'most-points') {
    const ids = new Set(goal.rows.map(({ id }) => id));
    const points = report.points.filter(({ row }) => ids.has(row)).map((line) => line.points);
    const known = points.flatMap((one) => (one === null ? [] : [one]));
    return known.length === points.length ? { value: exactSum(known), tolerance: 0 } : null;
  }
  const measure = { 'tallest-for-width': 'height-to-width', 'greatest-tilt': TILT_ID }[String(goal.kind)] ?? 'height';
  const fact = report.facts.find(({ id }) => id === measure);
  return fact === undefined || fact.value === null ? null : { value: fact.value, tolerance: fact.tolerance };
}
