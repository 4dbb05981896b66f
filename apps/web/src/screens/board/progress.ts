// A group's own progress: the best of its tries against the best of those before it. No group is held against another.

import type { Challenge, Report } from '@cairnmark/engine';
import { compareReports, standings } from '@cairnmark/engine';
import type { OutReason } from '@cairnmark/scoring';
import type { BoardLine } from './lines.ts';

export interface Try {
  readonly report: Report;
  /** What the ranking asks for first, rounded as it rounds; null: not measured. */
  readonly value: number | null;
  /** Why this try takes no place; empty: it would take one. */
  readonly out: readonly OutReason[];
}

export interface Progress {
  readonly group: string;
  /** The earliest first. */
  readonly tries: readonly Try[];
  /** The earliest of the best tries that take a place; null when none does. */
  readonly best: Try | null;
  /** The best of those before it; null when it was the first that counts. */
  readonly before: Try | null;
  /** The two lie closer together than the ruler can tell. */
  readonly areNear: boolean;
}

export function progressOf({ group, tries }: BoardLine, challenge: Challenge): Progress {
  const told = tries.map((report) => tryOf(report, challenge));
  const counted = told.filter(({ out }) => out.length === 0);
  const best = bestOf(counted, challenge);
  const before = best === null ? null : bestOf(counted.slice(0, counted.indexOf(best)), challenge);
  const areNear = best !== null && before !== null && isWithinError(best, before, challenge);
  return { group, tries: told, best, before, areNear };
}

/** As the ranking would mark two groups, whose tries these were. */
const isWithinError = (best: Try, before: Try, challenge: Challenge): boolean =>
  compareReports(best.report, before.report, challenge).some((line) => line.kind === 'key' && line.withinError);

/** A try as if it stood alone on the board: what counts of it, and whether it would take a place. */
function tryOf(report: Report, challenge: Challenge): Try {
  const [standing] = standings([{ ...report, chosen: true }], challenge, [
    { id: report.group, name: '', measured: {} },
  ]);
  return {
    report,
    value: standing?.decidedBy[0]?.value ?? null,
    out: standing?.out ?? [],
  };
}

function bestOf(tries: readonly Try[], { ranking }: Challenge): Try | null {
  const sign = ranking.first.better === 'more' ? 1 : -1;
  return tries.reduce<Try | null>((best, one) => {
    if (one.value === null) return best;
    return best === null || best.value === null || sign * (one.value - best.value) > 0 ? one : best;
  }, null);
}
