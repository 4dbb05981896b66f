// What separates two builds of one challenge, line by line: the ranking's own measures in their order, then every part of
// the points. Two reports of one group tell what changed since the last try.

import type { Verdict } from '@cairnmark/scoring';
import { exactSum, rank, requirementPoints } from '@cairnmark/scoring';
import type { Report } from '../report-types.ts';
import { entryOf } from '../standings/entry.ts';
import { countsItsOwn, statedPoints } from '../standings/fallen.ts';
import { unmeasuredLosses } from '../standings/losses.ts';
import type { Challenge } from '../types.ts';

/** The first of two, the second, or neither. */
export type Ahead = 'first' | 'second' | null;

export type WhyLine =
  /** A measure of the ranking, rounded as the ranking rounds */
  | {
      readonly kind: 'key';
      readonly by: string;
      readonly first: number | null;
      readonly second: number | null;
      readonly ahead: Ahead;
      readonly withinError: boolean;
    }
  /** A row of the points table. */
  | ({ readonly kind: 'row'; readonly row: string; readonly measure: string } & Both)
  /** What a rule cost or earned; told also when the verdicts differ and no points hang on it. */
  | ({
      readonly kind: 'requirement';
      readonly requirement: string;
      /** null: a build that was not there keeps and breaks nothing. */
      readonly verdicts: readonly [Verdict | null, Verdict | null];
    } & Both)
  | ({ readonly kind: 'own-result'; readonly measure: string } & Both)
  /** Stated points of a build that fell, in place of all that it earned. */
  | ({ readonly kind: 'fallen' } & Both)
  | ({ readonly kind: 'adjustments' } & Both)
  | ({ readonly kind: 'total' } & Both);

/** Points of a build. null: nothing of it counts, which is not 0; not known: what may take some was not measured. */
export type ToldPoints = number | 'not-known' | null;

interface Both {
  readonly first: ToldPoints;
  readonly second: ToldPoints;
}

/** Lines in which the two differ, and every measure of the ranking up to the one that decides. */
export function compareReports(first: Report, second: Report, challenge: Challenge): readonly WhyLine[] {
  return [...keyLines(first, second, challenge), ...pointLines(first, second, challenge)];
}

function keyLines(first: Report, second: Report, challenge: Challenge): readonly WhyLine[] {
  // Out or not, the values are compared: that a build takes no place is told beside.
  const entries = [
    { ...entryOf(first, challenge, FIRST), out: [] },
    { ...entryOf(second, challenge, SECOND), out: [] },
  ];
  const { tieBreaks, first: main } = challenge.ranking;
  const lines: WhyLine[] = [];
  for (const key of [main, ...tieBreaks]) {
    const standings = rank(entries, { first: key, tieBreaks: [] });
    const [one, two] = [FIRST, SECOND].map((name) => standings.find(({ group }) => group === name));
    const value = (standing: typeof one) => standing?.decidedBy[0]?.value ?? null;
    const ahead = aheadOf(one?.place ?? null, two?.place ?? null);
    const withinError = key === main && (one?.withinErrorOf.length ?? 0) > 0;
    lines.push({
      kind: 'key',
      by: key.by,
      first: value(one),
      second: value(two),
      ahead,
      withinError,
    });
    if (ahead !== null) break;
  }
  return lines;
}

const FIRST = 'first';
const SECOND = 'second';

/** A build without a place misses the measure, and comes after one that has it. */
function aheadOf(first: number | null, second: number | null): Ahead {
  if (first === second) return null;
  if (first === null) return 'second';
  if (second === null) return 'first';
  return first < second ? 'first' : 'second';
}

function pointLines(first: Report, second: Report, challenge: Challenge): readonly WhyLine[] {
  const both = <T>(of: (report: Report) => T): readonly [T, T] => [of(first), of(second)];
  const line = (of: (report: Report) => ToldPoints): Both => ({ first: of(first), second: of(second) });
  const earns = (report: Report) => countsItsOwn(report, challenge);
  const rows = challenge.points.map(({ id, measure }): WhyLine => {
    const points = (report: Report) => report.points.find(({ row }) => row === id)?.points ?? 'not-known';
    return { kind: 'row', row: id, measure, ...line((report) => (earns(report) ? points(report) : null)) };
  });
  const requirements = challenge.requirements.map(({ id }): WhyLine => {
    const found = (report: Report) => report.requirements.find(({ requirement }) => requirement === id);
    const points = (report: Report): ToldPoints => {
      const one = found(report);
      return one === undefined || !earns(report) ? null : (requirementPoints(one) ?? 'not-known');
    };
    const verdicts = both((report) => found(report)?.verdict ?? null);
    return { kind: 'requirement', requirement: id, verdicts, ...line(points) };
  });
  const measures = [...new Set([...first.own, ...second.own].map(({ measure }) => measure))];
  const own = measures.map((measure): WhyLine => {
    const points = (report: Report) => report.own.find((one) => one.measure === measure)?.points ?? 0;
    return { kind: 'own-result', measure, ...line((report) => (earns(report) ? points(report) : 0)) };
  });
  const fallen: WhyLine = { kind: 'fallen', ...line((report) => statedPoints(report, challenge)) };
  const totalOf = (report: Report): ToldPoints =>
    unmeasuredLosses(report, challenge).length > 0 ? 'not-known' : report.total;
  const byHand = (report: Report) =>
    totalOf(report) === null ? 0 : exactSum(report.adjustments.map(({ points }) => points));
  const adjustments: WhyLine = { kind: 'adjustments', ...line(byHand) };
  const total: WhyLine = { kind: 'total', ...line(totalOf) };
  return [...rows, ...requirements, ...own, fallen, adjustments].filter(differ).concat(total);
}

const differ = (line: WhyLine): boolean =>
  line.first !== line.second || (line.kind === 'requirement' && line.verdicts[0] !== line.verdicts[1]);
