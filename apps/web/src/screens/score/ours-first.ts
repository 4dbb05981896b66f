// "Our own result first": while it is on, the app's value of what the class asks for is covered until the group has entered
// its own, or says that it wants to see it anyway.

import type { Challenge, OwnResult, Report, ReportedFact } from '@cairnmark/engine';
import { MEASURES } from '@cairnmark/geometry';

/** What the device remembers of a try. */
export interface OursFirst {
  /** null: as is usual for the class. */
  readonly on: boolean | null;
  /** Measures that were looked at before the group had entered its own. */
  readonly looked: readonly string[];
}

export const AS_USUAL: OursFirst = { on: null, looked: [] };

export interface Covering {
  /** Is there anything that an own result is asked for? */
  readonly asks: boolean;
  readonly on: boolean;
  /** Is it as is usual for the class? */
  readonly usual: boolean;
  readonly covered: ReadonlySet<string>;
  readonly looked: ReadonlySet<string>;
  /** The total would give away what is covered. */
  readonly totalCovered: boolean;
}

export function coveringOf(
  { on: set, looked }: OursFirst,
  challenge: Challenge,
  report: Report,
  own: readonly OwnResult[],
): Covering {
  const asked = askedMeasures(challenge).filter((id) => report.facts.some((fact) => fact.id === id && canCover(fact)));
  const on = asked.length > 0 && (set ?? isUsual(challenge));
  const open = new Set([...own.map(({ measure }) => measure as string), ...looked]);
  const covered = new Set(on ? asked.filter((id) => !open.has(id)) : []);
  return {
    asks: asked.length > 0,
    on,
    usual: on === isUsual(challenge),
    covered,
    looked: new Set(on ? asked.filter((id) => looked.includes(id)) : []),
    totalCovered: challenge.points.some(({ measure }) => covered.has(measure)),
  };
}

/** A class is asked for what earns points when it agrees; the youngest count and read off, and have nothing to work out. */
export const isUsual = ({ gradePreset, own }: Challenge): boolean =>
  own.rewards.length > 0 && gradePreset !== 'grades-2-3';

/** What an own result is paid for; else what earns points; else what the places go by. */
function askedMeasures({ own, points, ranking, hidden }: Challenge): readonly string[] {
  const rewarded = own.rewards.map(({ measure }) => measure);
  const scoring = points.map(({ measure }) => measure);
  const asked = rewarded.length > 0 ? rewarded : scoring.length > 0 ? scoring : [ranking.first.by];
  return [...new Set(asked)].filter((id) => !hidden.includes(id) && MEASURES.some((one) => one.id === id));
}

/** What people read off the real build, or decided, is theirs already. */
const canCover = ({ source, value, predicted }: ReportedFact): boolean =>
  source === 'predicted' && value !== null && predicted?.status === 'measured';
