// What a challenge seeks, and what it asks of a build, as the search for the best build takes them. What the search cannot
// look at is named, so that nobody takes the answer for more than it is.

import type { BestGoal, Comparison, MeasuredRule, PointsRow, Requirement } from '@cairnmark/scoring';
import { kindFactId, POINTS_ID, SETS_ID, TILT_ID } from '../facts/ids.ts';
import type { Challenge } from '../types.ts';

export interface Sought {
  readonly goal: BestGoal;
  /** Rows of the points table that no drawing decides, or that do not sum over pieces. */
  readonly rowsLeftOut: readonly string[];
}

/** null: the challenge ranks by something that this search does not know. */
export function soughtIn({ ranking, points }: Challenge, additive: ReadonlySet<string>): Sought | null {
  const { first, tieBreaks } = ranking;
  if (first.better !== 'more') return null;
  switch (first.by) {
    case 'height': {
      const [next] = tieBreaks;
      const narrow = next?.by === 'base-area' && next.better === 'less';
      return { goal: { kind: narrow ? 'tallest-on-smallest-base' : 'tallest' }, rowsLeftOut: [] };
    }
    case 'height-to-width':
      return { goal: { kind: 'tallest-for-width' }, rowsLeftOut: [] };
    case TILT_ID:
      return { goal: { kind: 'greatest-tilt' }, rowsLeftOut: [] };
    case POINTS_ID: {
      const counts = ({ measure }: PointsRow): boolean => additive.has(measure);
      const rows = points.filter(counts);
      if (rows.length === 0) return null;
      return {
        goal: { kind: 'most-points', rows },
        rowsLeftOut: points.filter((row) => !counts(row)).map(({ id }) => id),
      };
    }
    default:
      return null;
  }
}

/** What the rules that a build must keep leave. */
export interface Asked {
  readonly pieces: { readonly least: number; readonly most: number };
  readonly baseAtMostMm2: number | null;
  readonly tiltAtLeastRad: number;
  /** By kind id; a kind that is not listed may be used as often as there are pieces. */
  readonly kinds: ReadonlyMap<string, { readonly least: number; readonly most: number }>;
  readonly onlyEarned: boolean;
  /** Ids of rules that were not looked at. Those that people judge are not among them. */
  readonly leftOut: readonly string[];
  /** Ids of rules that cost or earn points, and are kept here as if they had to be. */
  readonly taken: readonly string[];
}

export function askedBy({ requirements, kit, ranking }: Challenge): Asked {
  const ids = kit.kinds.map(({ id }) => id);
  let asked: Asked = {
    pieces: { least: 1, most: Number.POSITIVE_INFINITY },
    baseAtMostMm2: null,
    tiltAtLeastRad: 0,
    kinds: new Map(),
    onlyEarned: false,
    leftOut: [],
    taken: [],
  };
  // Where points are sought, a rule that costs or earns some is kept as if it were a must: what it is worth stays out.
  const earning = ranking.first.by === POINTS_ID;
  for (const rule of requirements) {
    if (rule.kind === 'judged' || (rule.consequence.kind !== 'must' && !earning)) continue;
    const kept = withRule(asked, rule, ids);
    asked = kept ?? { ...asked, leftOut: [...asked.leftOut, rule.id] };
    if (kept !== null && rule.consequence.kind !== 'must') asked = { ...asked, taken: [...asked.taken, rule.id] };
  }
  return asked;
}

type Looked = Exclude<Requirement, { readonly kind: 'judged' }>;

/** null: not one that the search can keep to. */
function withRule(asked: Asked, rule: Looked, ids: readonly string[]): Asked | null {
  switch (rule.kind) {
    case 'only-earned':
      return { ...asked, onlyEarned: true };
    case 'only-kinds':
      return ids
        .filter((id) => !rule.kinds.includes(id))
        .reduce((all, id) => withKind(all, id, { least: 0, most: 0 }), asked);
    case 'measured':
      return withMeasured(asked, rule, ids);
  }
}

function withMeasured(asked: Asked, rule: MeasuredRule, ids: readonly string[]): Asked | null {
  const { measure, comparison, limit } = rule;
  if (measure === 'pieces') return { ...asked, pieces: both(asked.pieces, countRange(comparison, limit)) };
  if (measure === 'base-area' && comparison === 'at-most') {
    return { ...asked, baseAtMostMm2: Math.min(asked.baseAtMostMm2 ?? Number.POSITIVE_INFINITY, limit) };
  }
  if (measure === TILT_ID && comparison === 'at-least') {
    return { ...asked, tiltAtLeastRad: Math.max(asked.tiltAtLeastRad, limit) };
  }
  if (measure === SETS_ID && comparison === 'at-least') {
    return ids.reduce((all, id) => withKind(all, id, countRange(comparison, limit)), asked);
  }
  const kind = ids.find((id) => kindFactId(id) === measure);
  return kind === undefined ? null : withKind(asked, kind, countRange(comparison, limit));
}

interface Range {
  readonly least: number;
  readonly most: number;
}

const withKind = (asked: Asked, id: string, range: Range): Asked => ({
  ...asked,
  kinds: new Map(asked.kinds).set(id, both(asked.kinds.get(id) ?? FREE, range)),
});

const FREE: Range = { least: 0, most: Number.POSITIVE_INFINITY };

const both = (one: Range, other: Range): Range => ({
  least: Math.max(one.least, other.least),
  most: Math.min(one.most, other.most),
});

/** Exactly two and a half pieces: no count is. */
const countRange = (comparison: Comparison, limit: number): Range => ({
  least: comparison === 'at-most' ? 0 : Math.ceil(limit),
  most: comparison === 'at-least' ? Number.POSITIVE_INFINITY : Math.floor(limit),
});
