// The names that a record may use, as lists to choose from, in the order in which they are told. Where another package
// has the list, it is that one; each table here names every member of its type, or it does not compile.

import type { ClassPi, FactSource, GradePreset, HeightSource, OwnLine, Slip } from '@cairnmark/engine';
import type {
  BaseDefinition,
  CountingConvention,
  Hold,
  NotMeasuredReason,
  NotPredicted,
  Side,
  SolidId,
  Stability,
  Unit,
  Working,
} from '@cairnmark/geometry';
import { CATALOGUE, MEASURES, RULERS } from '@cairnmark/geometry';
import type { Comparison, Rounding, SupplyRule, Verdict } from '@cairnmark/scoring';

const namesOf = <Name extends string>(table: Record<Name, true>) => Object.keys(table) as Name[];

export const SOLID_IDS = Object.keys(CATALOGUE) as SolidId[];
export const MEASURE_IDS = MEASURES.map(({ id }) => id);
export const RULER_IDS = RULERS.map(({ id }) => id);

export const GRADE_PRESETS = namesOf<GradePreset>({ 'grades-2-3': true, 'grades-4-5': true, 'grades-6-8': true });
export const HEIGHT_SOURCES = namesOf<HeightSource>({ ruler: true, photo: true, model: true });
export const COUNTING_CONVENTIONS = namesOf<CountingConvention>({
  'flat-only': true,
  'flat-and-curved-apart': true,
  'all-surfaces': true,
});
export const BASE_DEFINITIONS = namesOf<BaseDefinition>({
  'outline-of-pieces-on-table': true,
  'contact-patches': true,
  'hull-of-contacts': true,
});
export const ROUNDINGS = namesOf<Rounding>({ none: true, down: true, nearest: true, up: true });
export const COMPARISONS = namesOf<Comparison>({ exactly: true, 'at-least': true, 'at-most': true });
export const UNITS = namesOf<Unit>({ mm: true, mm2: true, mm3: true, count: true, rad: true, ratio: true, s: true });
export const WORKING_METHODS = namesOf<Working['method']>({
  'sum-of-pieces': true,
  'highest-point': true,
  'boundary-walk': true,
  hull: true,
  count: true,
  'surface-less-contacts': true,
  ratio: true,
});
export const NOT_MEASURED_REASONS = namesOf<NotMeasuredReason>({
  'no-layout': true,
  'traced-outline-only': true,
  'no-height-read': true,
  'no-pieces-listed': true,
  'divisor-zero': true,
});
export const FACT_SOURCES = namesOf<FactSource>({ predicted: true, observed: true, decided: true, judged: true });
export const VERDICTS = namesOf<Verdict>({ kept: true, broken: true, 'not-measured': true, 'not-judged': true });
export const HOLDS = namesOf<Hold>({ taped: true, glued: true, leaning: true, nested: true });
export const NOT_PREDICTED_REASONS = namesOf<NotPredicted['why']>({
  taped: true,
  glued: true,
  leaning: true,
  nested: true,
  'paper-rolls': true,
});
export const STABILITY_VERDICTS = namesOf<Stability['verdict']>({
  steady: true,
  wobbly: true,
  'too-close-to-call': true,
  falls: true,
  'rolls-at-a-touch': true,
  'not-predicted': true,
  'needs-solver': true,
  'not-decided': true,
});
export const STABILITY_METHODS = namesOf<Stability['method']>({
  recursion: true,
  'least-squares-and-programmes': true,
});
export const SIDES = namesOf<Side>({ left: true, right: true, front: true, back: true });
export const CLASS_PIS = namesOf<ClassPi>({ '3': true, '3.14': true, '22/7': true, key: true });
export const OWN_VERDICTS = namesOf<OwnLine['verdict']>({
  agrees: true,
  close: true,
  'check-the-working': true,
  'not-measured': true,
});
export const SLIPS = namesOf<Slip>({
  'diameter-for-radius': true,
  'radius-for-diameter': true,
  'cm-for-mm': true,
  'third-forgotten': true,
  'slant-for-height': true,
  'other-pi': true,
  'piece-forgotten': true,
  'contact-counted-once': true,
  'added-for-subtracted': true,
});
export const HAND_OVERS = namesOf<SupplyRule['handOver']>({
  'at-a-touch': true,
  'once-it-lies': true,
  'as-the-group-likes': true,
});
export const DROPS = namesOf<SupplyRule['dropped']>({
  'lost-this-turn': true,
  'must-be-fetched': true,
  'carrier-chooses': true,
});
