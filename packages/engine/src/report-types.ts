// A report: what the engine made of one attempt. Lengths mm, areas mm2, volumes mm3.

import type { BuildMeasures, Fact, MeasureId, Stability } from '@cairnmark/geometry';
import type { PointsLine, RequirementLine, Supply } from '@cairnmark/scoring';
import type { Adjustment, AttemptState, Decision } from './types.ts';

/** The step of a working that seems to differ: with it done so, the group's value comes out. */
export type Slip =
  | 'diameter-for-radius'
  | 'radius-for-diameter'
  | 'cm-for-mm'
  | 'third-forgotten'
  | 'slant-for-height'
  | 'other-pi'
  | 'piece-forgotten'
  | 'contact-counted-once'
  | 'added-for-subtracted';

export interface OwnLine {
  readonly measure: MeasureId;
  readonly own: number;
  /** Worked out from the drawing with the class's pi; where it gives none, the value that counts; null: not measured. */
  readonly expected: number | null;
  /** Where the expected value came from; null: there is none. */
  readonly source: FactSource | null;
  readonly tolerance: number;
  readonly verdict: 'agrees' | 'close' | 'check-the-working' | 'not-measured';
  readonly slip: Slip | null;
  readonly points: number;
}

export type FactSource = 'predicted' | 'observed' | 'decided' | 'judged';

/** A fact with the value that counts and where it came from; the other values stand beside it. */
export interface ReportedFact {
  readonly id: string;
  readonly unit: Fact['unit'];
  /** null: not measured. */
  readonly value: number | null;
  readonly tolerance: number;
  /** Parts of the tolerance that other builds may share, by reading; see ScoringFact. */
  readonly errors: Readonly<Record<string, number>>;
  readonly source: FactSource | null;
  readonly predicted: Fact | null;
  readonly observed: {
    readonly value: number;
    readonly tolerance: number;
    readonly readings: readonly number[];
  } | null;
  readonly decided: Decision | null;
}

/** More pieces of a kind used than the kit has. */
export interface StockBreach {
  readonly kind: string;
  readonly used: number;
  readonly stock: number;
}

export interface Report {
  readonly engineVersion: string;
  readonly challenge: string;
  readonly group: string;
  readonly attempt: string;
  /** When the attempt was made (ISO 8601 with zone), and whether it was chosen: which attempt counts follows from these. */
  readonly at: string;
  readonly chosen: boolean;
  readonly state: AttemptState;
  readonly confirmedBy: string | null;
  readonly facts: readonly ReportedFact[];
  readonly gaps: BuildMeasures['gaps'];
  /** Whether it stands, by how much, and what would mend it; null when there is no drawing of the pieces. */
  readonly stability: Stability | null;
  readonly stockBreaches: readonly StockBreach[];
  readonly requirements: readonly RequirementLine[];
  readonly points: readonly PointsLine[];
  readonly adjustments: readonly Adjustment[];
  readonly own: readonly OwnLine[];
  /** What the group had earned, where the challenge has a supply. */
  readonly supply: Supply | null;
  /**
   * Points of the rows, of requirements kept and broken, of own results and of adjustments. null when nothing counts, or
   * when points may be lost by what was not measured: a row or a requirement then says so.
   */
  readonly total: number | null;
}
