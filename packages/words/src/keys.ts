// What every language must have words for: the codes of all packages below. A code without its word is a type error.

import type { EngineIssue, FactSource } from '@cairnmark/engine';
import type { EnvelopeIssueCode, FileIssueCode, Format, JsonIssueCode, ShapeIssueCode } from '@cairnmark/formats';
import type {
  BaseDefinition,
  CountingConvention,
  MeasureId,
  NotMeasuredReason,
  NotPredicted,
  Resting,
  SolidId,
  Working,
} from '@cairnmark/geometry';
import type { Comparison, DayRule, OutReason, Rounding } from '@cairnmark/scoring';
import type { Saying } from './saying.ts';
import type { SideName } from './tilts.ts';

export type IssueCode = FileIssueCode | JsonIssueCode | EnvelopeIssueCode | ShapeIssueCode | EngineIssue['code'];

/** A sentence that stands for another when the issue tells another limit: "more than" for "or more". */
export type IssueVariant = 'not-above';

export type IssueTexts = Readonly<Record<IssueCode | IssueVariant, string>>;

/** Measures of a build, and the points, which are ranked like one. */
export type MeasureName = MeasureId | 'points';

/** Things that come in whole numbers, besides the measures that are counted. */
export type CountedThing = Exclude<MeasureName, LengthAreaVolume> | 'apexes' | 'seconds';

type LengthAreaVolume =
  | 'height'
  | 'footprint-area'
  | 'footprint-perimeter'
  | 'footprint-inner-perimeter'
  | 'base-area'
  | 'base-perimeter'
  | 'courtyard-area'
  | 'hull-area'
  | 'volume'
  | 'paper'
  | 'touchable-surface';

/** The sizes of the solids in the catalogue, and the measurements that are taken instead. */
export type SizeName =
  | 'edge'
  | 'length'
  | 'width'
  | 'height'
  | 'a'
  | 'b'
  | 'c'
  | 'sides'
  | 'slant'
  | 'slantLength'
  | 'slantWidth'
  | 'topEdge'
  | 'topLength'
  | 'topWidth'
  | 'radius'
  | 'diameter'
  | 'circumference'
  | 'topRadius'
  | 'topDiameter'
  | 'topCircumference';

/** The sides on which they rest. */
export type RestingName =
  | 'base'
  | 'top'
  | 'side'
  | 'long-side'
  | 'short-side'
  | 'side-a'
  | 'side-b'
  | 'side-c'
  | 'side-length'
  | 'side-width'
  | 'face'
  | 'square'
  | 'triangle'
  | 'round'
  | 'flat'
  | 'dome';

export interface NameTables {
  /** What pupils read. */
  readonly measures: Readonly<Record<MeasureName, string>>;
  /** The trade's names, for the teacher. */
  readonly plainMeasures: Readonly<Record<MeasureName, string>>;
  /** One, several. */
  readonly counted: Readonly<Record<CountedThing, readonly [one: string, several: string]>>;
  readonly solids: Readonly<Record<SolidId, string>>;
  readonly sizes: Readonly<Record<SizeName, string>>;
  readonly restings: Readonly<Record<RestingName, string>>;
  readonly counting: Readonly<Record<CountingConvention, string>>;
  readonly base: Readonly<Record<BaseDefinition, string>>;
  readonly contact: Readonly<Record<Resting['contact'], string>>;
  readonly sources: Readonly<Record<FactSource, string>>;
  readonly rounding: Readonly<Record<Rounding, string>>;
  /** Kinds of file. */
  readonly formats: Readonly<Record<Format, string>>;
  /** Kinds of value in a file, as JSON knows them. */
  readonly jsonTypes: Readonly<Record<JsonType, string>>;
}

export type JsonType = 'string' | 'number' | 'boolean' | 'array' | 'object' | 'null';

export type ResultKey =
  | `unmeasured.${NotMeasuredReason}`
  | `method.${Working['method']}`
  | `bound.${Comparison}`
  | `out.${OutReason['code']}`
  | `day.${DayRule['kind']}`;

export type StabilityKey =
  | `verdict.${Saying}`
  | `without.${Saying}`
  | `why.${NotPredicted['why']}`
  | `side.${SideName}`;

export type CautionId =
  | 'stands-or-falls'
  | 'cutting'
  | 'hot-glue'
  | 'tall-towers'
  | 'running'
  | 'photos'
  | 'school-rules';

export type CautionTexts = Readonly<Record<CautionId, string>>;
