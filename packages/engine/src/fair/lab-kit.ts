// A kit as the points lab sees it: how often each kind has what points are given for.

import type { CountingConvention, Fact, Ruler, Solid } from '@cairnmark/geometry';
import { CONTACT_MM, makeSolid, measureBuild } from '@cairnmark/geometry';
import type { LabData, LabKind, PointsRow } from '@cairnmark/scoring';
import { pointsLines } from '@cairnmark/scoring';
import type { Challenge, KindOfPiece } from '../types.ts';
import type { LabRow } from './lab-rows.ts';
import { labRows } from './lab-rows.ts';

export interface LabKit {
  readonly rows: readonly LabRow[];
  /** Its rows are the ids of those, its kinds those below. */
  readonly data: LabData;
  /** In the order of the kit; a kind whose sizes do not fit together is left out everywhere. */
  readonly kinds: readonly KindOfPiece[];
  /** By kind id. */
  readonly solids: ReadonlyMap<string, Solid>;
}

/**
 * Sizes are those of the kit. `minutes`: to fold one piece, by kind id; a kind that is not listed has none. A measure in whole
 * steps is rounded down for each piece by itself, so for a whole build it holds about: two cones of 75.4 cm2 have 7 tens each,
 * and 15 together.
 */
export function labKit(
  challenge: Challenge,
  counting: CountingConvention,
  ruler: Pick<Ruler, 'unit' | 'stepMm'>,
  minutes: Readonly<Record<string, number>>,
): LabKit {
  const rows = labRows(challenge.points, counting, ruler);
  const made = challenge.kit.kinds.flatMap((kind) => {
    const solid = makeSolid(kind.solid);
    return solid.ok ? [{ kind, solid: solid.value }] : [];
  });
  const kinds = made.map(({ kind, solid }): LabKind => {
    const valueOf = valuesOf(kind, solid, challenge, { counting, rulerStepMm: ruler.stepMm });
    return {
      id: kind.id,
      measures: rows.map((row) => wholeTimes(row, valueOf(row.id))),
      paperMm2: valueOf('paper'),
      minutes: minutes[kind.id] ?? null,
    };
  });
  return {
    rows,
    data: { rows: rows.map(({ id }) => id), kinds },
    kinds: made.map(({ kind }) => kind),
    solids: new Map(made.map(({ kind, solid }) => [kind.id, solid])),
  };
}

/** Of one piece by itself, as a report would have them; its height is that of its usual way up. */
function valuesOf(
  { id, solid: spec }: KindOfPiece,
  solid: Solid,
  { base }: Challenge,
  options: { readonly counting: CountingConvention; readonly rulerStepMm: number },
): (measure: LabRow['id']) => number {
  const measured = measureBuild({ kind: 'numbers-only', pieces: [id] }, new Map([[id, spec]]), {
    ...options,
    base,
    gapAllowanceMm: CONTACT_MM,
  });
  const facts: readonly Fact[] = measured.ok ? measured.value.facts : [];
  const [usual] = solid.restings;
  return (measure) => {
    if (measure === 'height') return usual?.heightMm ?? 0;
    const fact = facts.find((one) => one.id === measure);
    return fact?.status === 'measured' ? fact.value : 0;
  };
}

/** How many whole times the step goes into the value, to the millionth as in every points table. */
function wholeTimes({ id, per }: LabRow, value: number): number {
  const row: PointsRow = { id, measure: id, points: 1, per, rounding: 'down' };
  const fact = { id, value, unit: '', tolerance: 0, errors: {} };
  return pointsLines([row], new Map([[id, fact]])).sum ?? 0;
}
