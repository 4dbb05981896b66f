// A fact is one measured number of a build: value, unit, tolerance and working, or the reason why it was not measured.

import type { Step, Unit } from '../kernel/formula.ts';
import type { Vec2 } from '../kernel/vec.ts';

export type MeasureId =
  | 'height'
  | 'footprint-area'
  | 'footprint-perimeter'
  | 'footprint-inner-perimeter'
  | 'footprint-parts'
  | 'base-area'
  | 'base-perimeter'
  | 'courtyard-area'
  | 'hull-area'
  | 'volume'
  | 'paper'
  | 'touchable-surface'
  | 'pieces'
  | 'kinds'
  | 'flat-faces'
  | 'curved-surfaces'
  | 'straight-edges'
  | 'curved-edges'
  | 'vertices'
  | 'faces'
  | 'edges'
  | 'corners'
  | 'base-width'
  | 'height-to-width'
  | 'volume-per-paper'
  | 'area-to-perimeter';

export type NotMeasuredReason =
  | 'no-layout' // just the numbers: nothing was drawn
  | 'traced-outline-only' // a traced outline does not show it
  | 'no-height-read'
  | 'no-pieces-listed'
  | 'divisor-zero'; // a ratio whose divisor is 0, such as the area to perimeter of a point

/**
 * How the number came about. `steps` are formulas with numbers put in (the last result is the value); `method` names the
 * way where no formula a pupil could write gives it, such as walking round an outline.
 */
export interface Working {
  readonly method:
    | 'sum-of-pieces'
    | 'highest-point'
    | 'boundary-walk'
    | 'hull'
    | 'count'
    | 'surface-less-contacts'
    | 'ratio';
  readonly steps: readonly Step[];
  /** One line a piece (or a kind), for sums: which, how many, and how its number came about. */
  readonly parts: readonly WorkingPart[];
}

export interface WorkingPart {
  readonly kind: string;
  readonly times: number;
  readonly each: number;
  readonly unit: Unit;
  readonly steps: readonly Step[];
}

export interface MeasuredFact {
  readonly status: 'measured';
  readonly id: MeasureId;
  readonly value: number;
  readonly unit: Unit;
  /** Expanded uncertainty, twice the standard one (about 95 %), from the ruler's resolution; 0 for counts. */
  readonly tolerance: number;
  /** The parts of it by reading, signed: `kind/size`, or `traced:` and what was traced. Their root sum square is the tolerance. */
  readonly errors: Readonly<Record<string, number>>;
  readonly working: Working;
}

export interface UnmeasuredFact {
  readonly status: 'not-measured';
  readonly id: MeasureId;
  readonly unit: Unit;
  readonly reason: NotMeasuredReason;
}

export type Fact = MeasuredFact | UnmeasuredFact;

/** How a school counts curved solids: see CONVENTIONS.md. */
export type CountingConvention = 'flat-only' | 'flat-and-curved-apart' | 'all-surfaces';

export type BaseDefinition = 'outline-of-pieces-on-table' | 'contact-patches' | 'hull-of-contacts';

/** What a challenge chooses about measuring. All lengths in mm. */
export interface MeasureOptions {
  readonly counting: CountingConvention;
  readonly base: BaseDefinition;
  /** Gaps up to this width count as closed for perimeter, parts and courtyard. At least CONTACT_MM. */
  readonly gapAllowanceMm: number;
  /** Division of the class's ruler, mm; sets the tolerance of everything computed from measured sizes. */
  readonly rulerStepMm: number;
}

/** A narrow place between two outlines that was counted as closed. */
export interface GapPlace {
  readonly at: Vec2;
  readonly widthMm: number;
}

export interface BuildMeasures {
  readonly facts: readonly Fact[];
  readonly gaps: readonly GapPlace[];
}
