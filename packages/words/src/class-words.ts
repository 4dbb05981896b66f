// The words about builds, in the language, the ruler and the names of one class.

import type {
  Adjustment,
  AttemptState,
  Challenge,
  Change,
  ClassPi,
  DecisionMade,
  OwnLine,
  Report,
  ReportedFact,
  StockBreach,
  WhyLine,
} from '@cairnmark/engine';
import type {
  GapPlace,
  MeasuredFact,
  SolidSpec,
  Stability,
  Step,
  Tilt,
  Unit,
  WithoutPiece,
  Working,
} from '@cairnmark/geometry';
import type {
  OutReason,
  PointsLine,
  PointsRow,
  RankingRule,
  Requirement,
  RequirementLine,
  Standing,
  Supply,
} from '@cairnmark/scoring';
import {
  amount,
  counted,
  errorText,
  exactAmount,
  fullAmount,
  measureName,
  plainMeasureName,
  roundedAmount,
  shownUnit,
} from './amounts.ts';
import { decisionSentence, factText, gapSentence, otherValues, workingText } from './facts.ts';
import { fallenSentence, fallingSentence } from './fallen.ts';
import { expectedSentence, ownSentence } from './own-results.ts';
import { pointsSentence } from './points.ts';
import { exact, inFull } from './quantities.ts';
import { ruleSentence, stockSentence } from './rules.ts';
import { fill } from './say.ts';
import { sizesText } from './sizes.ts';
import type { StabilityWords } from './stability.ts';
import { stabilityWords } from './stability.ts';
import type { StabilityBrief } from './stability-brief.ts';
import { stabilityBrief } from './stability-brief.ts';
import { orderText, outSentences, placeNotes } from './standings.ts';
import { ruleTitle, statedRow, statedRule } from './stated.ts';
import { supplySentences } from './supplies.ts';
import { tiltTowardsSentence } from './tilts.ts';
import type { ShownUnit } from './units.ts';
import type { Voice } from './voice.ts';
import type { Sides } from './why.ts';
import { changeSentence, whySentences } from './why.ts';
import { withoutPieceText } from './without-piece.ts';
import { stepLines } from './working.ts';
import type { WorkingRow } from './working-rows.ts';
import { workingRows } from './working-rows.ts';

/** Values are in the engine's units; tolerances are expanded ones, in the unit of the value. */
export interface ClassWords {
  /** Name of a measure as pupils read it; a criterion by its own name. */
  label(measure: string): string;
  /** The trade's name of a measure. */
  plainLabel(measure: string): string;
  /** The unit that a measure is shown in; no name for a count. */
  unit(measure: string): ShownUnit;
  /** A measured amount in honest digits. */
  amount(measure: string, value: number, tolerance: number): string;
  /** An amount that is known exactly: a limit, a rounded value. */
  exactAmount(measure: string, value: number): string;
  /** What a person read, decided or worked out, in full, with the decimals of the ruler. */
  fullAmount(measure: string, value: number): string;
  /** A value that the ranking has rounded to whole `step`s. */
  roundedAmount(measure: string, value: number, step: number): string;
  /** A size or another exact value by its unit alone. */
  exact(value: number, unit: Unit): string;
  /** What was read, by its unit alone. */
  full(value: number, unit: Unit): string;
  /** The sizes of a solid in few words: "5 × 5 × 10 cm". */
  sizes(spec: SolidSpec): string;
  /** "± 0.3 cm" in the unit of the measure, empty for 0. */
  error(measure: string, tolerance: number): string;
  /** The value that counts with its tolerance, or why there is none. */
  fact(fact: ReportedFact): string;
  /** Values that stand beside the one that counts, each with where it came from, and the readings. */
  otherValues(fact: ReportedFact): readonly string[];
  working(working: Working): readonly string[];
  /** The same as rows: what, how, result. */
  workingRows(fact: MeasuredFact): readonly WorkingRow[];
  steps(steps: readonly Step[]): readonly string[];
  gap(gap: GapPlace): string;
  /** Whether a build stands. `kinds`: kind ids of its pieces in building order, here and below. */
  stability(stability: Stability, kinds: readonly string[]): StabilityWords;
  /** The same in a sentence or two. */
  stabilityBrief(stability: Stability, kinds: readonly string[]): StabilityBrief;
  /** How the rest does when one piece (counted from 0) is taken out. */
  withoutPiece(answer: WithoutPiece, piece: number, kinds: readonly string[]): string;
  /** The tilt it bears to the side that was asked about; null: there is no answer. */
  tiltTowards(tilt: Tilt | null): string;
  rule(line: RequirementLine, rule: Requirement, tolerance: number): string;
  /** A rule as it is announced, with what hangs on it. */
  statedRule(rule: Requirement): string;
  /** A rule in a few words: "exactly 5 pieces". */
  ruleTitle(rule: Requirement): string;
  /** A row of the points table as it is announced. */
  statedRow(row: PointsRow): string;
  stock(breach: StockBreach): string;
  points(line: PointsLine, row: PointsRow, tolerance: number): string;
  adjustment(adjustment: Adjustment): string;
  /** A group's own result: does it agree, and which step seems to differ. The value that is right is not told. */
  own(line: OwnLine, pi: ClassPi): string;
  /** The value that an own result is held against; null when it was not measured. */
  ownExpected(line: OwnLine, pi: ClassPi): string | null;
  /** What a group has from the supply game, line by line. */
  supply(supply: Supply): readonly string[];
  /** That a build fell, and what that counts; null for one that did not fall. */
  fallen(state: AttemptState, rule: Challenge['fallen']): string | null;
  /** What the challenge says of builds that fall. */
  falling(rule: Challenge['fallen']): string;
  /** What separates two builds of one challenge. */
  why(lines: readonly WhyLine[], sides: Sides): readonly string[];
  /** That one of the two takes no place. */
  takesNoPlace(name: string, reason: string): string;
  /** What changed of a fact between two tries. */
  change(change: Change): string;
  /** Every reason why a build takes no place. */
  out(reasons: readonly OutReason[], report: Report | null, rules: readonly Requirement[]): string;
  placeNotes(standing: Pick<Standing, 'sharedWith' | 'withinErrorOf'>): readonly string[];
  order(rule: RankingRule): string;
  decision(made: DecisionMade, fact: ReportedFact | null): string;
}

export function classWords(voice: Voice): ClassWords {
  const { words, reader } = voice;
  return {
    label: (measure) => measureName(measure, voice),
    plainLabel: (measure) => plainMeasureName(measure, voice),
    unit: (measure) => shownUnit(measure, voice),
    amount: (measure, value, tolerance) => amount(measure, value, tolerance, voice),
    exactAmount: (measure, value) => exactAmount(measure, value, voice),
    fullAmount: (measure, value) => fullAmount(measure, value, null, voice),
    roundedAmount: (measure, value, step) => roundedAmount(measure, value, step, voice),
    exact: (value, unit) => exact(value, unit, reader.ruler, words.decimalMark),
    full: (value, unit) => inFull(value, unit, reader.ruler, words.decimalMark),
    sizes: (spec) => sizesText(spec, voice),
    error: (measure, tolerance) => errorText(measure, tolerance, voice),
    fact: (fact) => factText(fact, voice),
    otherValues: (fact) => otherValues(fact, voice),
    working: (working) => workingText(working, voice),
    workingRows: (fact) => workingRows(fact, voice),
    steps: (steps) => stepLines(steps, voice),
    gap: (gap) => gapSentence(gap, voice),
    stability: (stability, kinds) => stabilityWords(stability, kinds, voice),
    stabilityBrief: (stability, kinds) => stabilityBrief(stability, kinds, voice),
    withoutPiece: (answer, piece, kinds) => withoutPieceText(answer, piece, kinds, voice),
    tiltTowards: (tilt) => tiltTowardsSentence(tilt, voice),
    rule: (line, rule, tolerance) => ruleSentence(line, rule, tolerance, voice),
    statedRule: (rule) => statedRule(rule, voice),
    ruleTitle: (rule) => ruleTitle(rule, voice),
    statedRow: (row) => statedRow(row, voice),
    stock: (breach) => stockSentence(breach, voice),
    points: (line, row, tolerance) => pointsSentence(line, row, tolerance, voice),
    adjustment: ({ points, by, reason }) =>
      fill(words.results['points.adjusted'], { points: counted('points', points, words), by, reason }),
    own: (line, pi) => ownSentence(line, pi, voice),
    ownExpected: (line, pi) => expectedSentence(line, pi, voice),
    supply: (supply) => supplySentences(supply, voice),
    fallen: (state, rule) => fallenSentence(state, rule, words),
    falling: (rule) => fallingSentence(rule, words),
    why: (lines, sides) => whySentences(lines, sides, voice),
    takesNoPlace: (name, reason) => fill(words.why['takes-no-place'], { name, reason }),
    change: (change) => changeSentence(change, voice),
    out: (reasons, report, rules) => outSentences(reasons, report, rules, voice),
    placeNotes: (standing) => placeNotes(standing, voice),
    order: (rule) => orderText(rule, voice),
    decision: (made, fact) => decisionSentence(made, fact, voice),
  };
}
