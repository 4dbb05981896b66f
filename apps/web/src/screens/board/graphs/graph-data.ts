// What the graphs of a challenge show: the values of the tries that count, the first against the best, and which solids were
// used. Values in the unit that is shown.

import type { Attempt, ClassRecord, Report } from '@cairnmark/engine';
import { POINTS_ID, piecesUsed } from '@cairnmark/engine';
import type { BoardLine } from '../lines.ts';
import { firstValue, isVoid } from '../lines.ts';
import { progressOf } from '../progress.ts';
import type { Scene } from '../scene.ts';

/** One group's dot. */
export interface Dot {
  readonly line: BoardLine;
  readonly value: number;
}

/** Of every group with a result, the smallest first; groups alike stay in the order of the class. */
export function dotsOf(lines: readonly BoardLine[], scene: Scene): readonly Dot[] {
  const { size } = unitOfFirst(scene);
  const dots = inOrder(lines, scene.record).flatMap((line) => {
    const value = isVoid(line) ? null : firstValue(line);
    return value === null ? [] : [{ line, value: value / size }];
  });
  return dots.sort((a, b) => a.value - b.value);
}

/** Dots of one value, or of one division of the ruler. */
export interface Stack {
  readonly at: number;
  readonly dots: readonly Dot[];
}

/** `dots` from the smallest; `division`: to whole ones of it the values are read, 0: as they are. */
export function stacksOf(dots: readonly Dot[], division: number): readonly Stack[] {
  const stacks = new Map<number, Dot[]>();
  for (const dot of dots) {
    const at = division > 0 ? Math.round(dot.value / division) * division : dot.value;
    stacks.set(at, [...(stacks.get(at) ?? []), dot]);
  }
  return [...stacks].map(([at, stacked]) => ({ at, dots: stacked }));
}

export interface Again {
  readonly line: BoardLine;
  readonly first: number;
  readonly best: number;
  /** Tries that take part in the ranking. */
  readonly tries: number;
}

/** The first try that counts and the best one, of every group that has one, in the order of the class. */
export function againOf(lines: readonly BoardLine[], scene: Scene): readonly Again[] {
  const { size } = unitOfFirst(scene);
  return inOrder(lines, scene.record).flatMap((line) => {
    const { tries, best } = progressOf(line, scene.challenge);
    const values = tries.flatMap(({ out, value }) => (out.length > 0 || value === null ? [] : [value]));
    const [first] = values;
    if (first === undefined || best === null || best.value === null) return [];
    return [{ line, first: first / size, best: best.value / size, tries: values.length }];
  });
}

export interface BuildDot {
  readonly line: BoardLine;
  readonly base: number;
  readonly height: number;
}

/** Height against base of every build that counts and of which both were measured. */
export function buildDots(lines: readonly BoardLine[], scene: Scene): readonly BuildDot[] {
  const [x, y] = [scene.inClass.unit('base-area').size, scene.inClass.unit('height').size];
  return inOrder(lines, scene.record).flatMap((line) => {
    if (line.report === null || isVoid(line)) return [];
    const [base, height] = [factOf(line.report, 'base-area'), factOf(line.report, 'height')];
    return base === null || height === null ? [] : [{ line, base: base / x, height: height / y }];
  });
}

export interface UsedKind {
  /** Id of the kind; null: of several kinds together. */
  readonly kind: string | null;
  readonly pieces: number;
}

/** Pieces of the builds that count by kind, in the kit's order; those of which none was used are left out. */
export function usedKinds(lines: readonly BoardLine[], scene: Scene): readonly UsedKind[] {
  const attempts = new Map(scene.record.attempts.map((one): [string, Attempt] => [one.id, one]));
  const used = lines.flatMap((line) => {
    const attempt = line.report === null || isVoid(line) ? undefined : attempts.get(line.report.attempt);
    return attempt === undefined ? [] : piecesUsed(attempt.layout);
  });
  const kinds = scene.challenge.kit.kinds.map(({ id }) => ({
    kind: id,
    pieces: used.filter((kind) => kind === id).length,
  }));
  return kinds.filter(({ pieces }) => pieces > 0);
}

/** At most so many bars: the kinds of which most were used, and the rest together. The order stays. */
export function fewBars(kinds: readonly UsedKind[], most: number | null): readonly UsedKind[] {
  if (most === null || kinds.length <= most) return kinds;
  const ranked = [...kinds].sort((a, b) => b.pieces - a.pieces);
  const kept = new Set(ranked.slice(0, most - 1));
  const others = kinds.filter((one) => !kept.has(one));
  return [
    ...kinds.filter((one) => kept.has(one)),
    { kind: null, pieces: others.reduce((sum, { pieces }) => sum + pieces, 0) },
  ];
}

/** Every group has a result, or takes none: nothing that is shown now can help a build that is still to come. */
export const recordsAreIn = (lines: readonly BoardLine[]): boolean =>
  lines.some(({ report }) => report !== null) &&
  !lines.some(({ standing: { out } }) => out.some(({ code }) => code === 'no-attempt' || code === 'not-confirmed'));

/** The unit of what the ranking asks for first; points have none. */
export function unitOfFirst({
  challenge,
  inClass,
}: Pick<Scene, 'challenge' | 'inClass'>): ReturnType<Scene['inClass']['unit']> {
  const { by } = challenge.ranking.first;
  return by === POINTS_ID ? { name: '', size: 1 } : inClass.unit(by);
}

const factOf = ({ facts }: Report, measure: string): number | null =>
  facts.find(({ id }) => id === measure)?.value ?? null;

const inOrder = (lines: readonly BoardLine[], { groups }: ClassRecord): readonly BoardLine[] =>
  groups.flatMap(({ id }) => lines.filter(({ group }) => group === id));
