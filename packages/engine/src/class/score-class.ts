// A whole class: every attempt evaluated, every challenge ranked, the day added up.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { DayStanding, DayWarning, Standing, SupplyEvent, Totals } from '@cairnmark/scoring';
import { day } from '@cairnmark/scoring';
import { classIssues } from '../check/class-record.ts';
import type { EngineIssue } from '../check/issues.ts';
import { reportOf } from '../evaluate/report.ts';
import type { Report } from '../report-types.ts';
import type { Statics } from '../stability/statics.ts';
import type { CountingReports } from '../standings/counting.ts';
import { countingReports } from '../standings/counting.ts';
import { standingsOf } from '../standings/standings.ts';
import type { Challenge, ClassRecord, Group } from '../types.ts';
import type { Evaluator } from './remembered-reports.ts';
import { warningsOf } from './warnings.ts';

/** All that follows from a class. The maps are keyed by challenge id, in the order of the record. */
export interface ClassScore {
  /** One report an attempt, in the order of the record; none of a challenge that was not played yet. */
  readonly reports: ReadonlyMap<string, readonly Report[]>;
  /** Of each group the report that counts; null where none does. */
  readonly counting: ReadonlyMap<string, CountingReports>;
  /** One standing a group. */
  readonly standings: ReadonlyMap<string, readonly Standing[]>;
  readonly day: readonly DayStanding[];
  /** What the class should know before it reads the places. */
  readonly warnings: readonly DayWarning[];
}

/** The scores, or everything that is wrong; paths start at the record. `evaluate`: one that remembers spares work. */
export function scoreClass(
  record: ClassRecord,
  statics: Statics,
  evaluate: Evaluator = reportOf,
): Result<ClassScore, EngineIssue> {
  const issues = classIssues(record);
  if (issues.length > 0) return failure(issues);
  const evaluated = evaluateAll(record, statics, evaluate);
  if (!evaluated.ok) return evaluated;
  const boards = record.challenges.map((challenge) => boardOf(challenge, evaluated.value, record.groups));
  const counting = new Map(boards.map((board) => [board.challenge, board.counting]));
  const standings = new Map(boards.map((board) => [board.challenge, board.standings]));
  const totals = new Map(boards.map((board) => [board.challenge, totalsOf(board.counting)]));
  const notPlayed = new Set(boards.filter(({ reports }) => reports.length === 0).map(({ challenge }) => challenge));
  return success({
    reports: new Map(boards.map((board) => [board.challenge, board.reports])),
    counting,
    standings,
    day: day(standings, totals, record.day, notPlayed),
    warnings: warningsOf(record, counting),
  });
}

/** One challenge of the class. */
interface Board {
  readonly challenge: string;
  readonly reports: readonly Report[];
  readonly counting: CountingReports;
  readonly standings: readonly Standing[];
}

function boardOf(challenge: Challenge, all: readonly Report[], groups: readonly Group[]): Board {
  const reports = all.filter((report) => report.challenge === challenge.id);
  const counting = countingReports(reports, challenge, groups);
  return { challenge: challenge.id, reports, counting, standings: standingsOf(counting, challenge) };
}

/** For the day: the points of the attempts that count. */
const totalsOf = (counting: CountingReports): Totals =>
  new Map([...counting].map(([group, report]) => [group, report?.total ?? null]));

const NO_STROKES: readonly SupplyEvent[] = [];

/** Every report, or the issues of all layouts together. */
function evaluateAll(
  { attempts, challenges, groups, supplies }: ClassRecord,
  statics: Statics,
  evaluate: Evaluator,
): Result<readonly Report[], EngineIssue> {
  const results = attempts.map((attempt, k) => {
    const challenge = challenges.find(({ id }) => id === attempt.challenge);
    const group = groups.find(({ id }) => id === attempt.group);
    if (challenge === undefined || group === undefined) throw new RangeError(`unchecked attempt ${attempt.id}`);
    const events = supplies[challenge.id] ?? NO_STROKES;
    return evaluate(attempt, { challenge, group, events, statics, path: ['attempts', k] });
  });
  const issues = results.flatMap((result) => (result.ok ? [] : result.issues));
  return issues.length > 0 ? failure(issues) : success(results.flatMap((result) => (result.ok ? [result.value] : [])));
}
