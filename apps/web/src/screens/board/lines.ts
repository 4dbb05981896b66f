// The board of one challenge: every group with its standing, its tries and the one of them that counts.

import type { Challenge, ClassScore, Report } from '@cairnmark/engine';
import type { OutReason, Standing } from '@cairnmark/scoring';

export interface BoardLine {
  readonly group: string;
  /** null: none. */
  readonly place: number | null;
  readonly standing: Standing;
  /** The try that counts, or null where none does. */
  readonly report: Report | null;
  /** All tries of the group, the earliest first. */
  readonly tries: readonly Report[];
}

/** In the order of the places, and below them those that take none. */
export function boardLines(score: ClassScore, challenge: Challenge): readonly BoardLine[] {
  const reports = score.reports.get(challenge.id) ?? [];
  const counting = score.counting.get(challenge.id);
  return (score.standings.get(challenge.id) ?? []).map((standing) => ({
    group: standing.group,
    place: standing.place,
    standing,
    report: counting?.get(standing.group) ?? null,
    tries: inTime(reports.filter(({ group }) => group === standing.group)),
  }));
}

/** The value that the ranking asks for first, rounded as it rounds; null: not measured. */
export const firstValue = ({ standing }: BoardLine): number | null => standing.decidedBy[0]?.value ?? null;

/** Of these nothing was measured that could stand beside the others: what is worked out for a fallen build does not. */
export const isVoid = ({ standing: { out } }: BoardLine): boolean => out.some(({ code }) => VOID.includes(code));

const VOID: readonly OutReason['code'][] = ['absent', 'not-taking-part', 'fell', 'no-attempt'];

/** Tries that nobody has confirmed, besides the one that counts. */
export const waitingTries = ({ report, tries }: BoardLine): readonly Report[] =>
  tries.filter((one) => one !== report && one.confirmedBy === null && !isAway(one));

export const isAway = ({ state }: Report): boolean => state.kind === 'absent' || state.kind === 'not-taking-part';

const inTime = (reports: readonly Report[]): readonly Report[] =>
  [...reports].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
