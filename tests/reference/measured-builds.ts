// Builds for the tests of measures: a kit written in a few words, pieces put down, and the facts looked up by name.
// Lengths mm, turns rad.

import type {
  Fact,
  LaidPiece,
  Layout,
  MeasuredFact,
  MeasureId,
  MeasureOptions,
  PieceKinds,
  SolidSpec,
} from '@cairnmark/geometry';
import { CONTACT_MM, measureBuild } from '@cairnmark/geometry';
import { expectNear } from '../tools/within.ts';

/** A ruler in mm, curved solids counted apart, the base as the outlines of the pieces on the table, no gap closed. */
export const PLAIN: MeasureOptions = {
  counting: 'flat-and-curved-apart',
  base: 'outline-of-pieces-on-table',
  gapAllowanceMm: CONTACT_MM,
  rulerStepMm: 1,
};

export const kit = (kinds: Readonly<Record<string, SolidSpec>>): PieceKinds => new Map(Object.entries(kinds));

export const box = (length: number, width: number, height: number): SolidSpec => ({
  solid: 'rectangular-prism',
  sizes: { length, width, height },
});

export const put = (kind: string, xMm: number, yMm: number, resting = 'base', turnRad = 0): LaidPiece => ({
  kind,
  resting,
  xMm,
  yMm,
  turnRad,
});

export const laid = (...pieces: readonly LaidPiece[]): Layout & { kind: 'laid-out' } => ({ kind: 'laid-out', pieces });

/** Every fact of the build by its id. A refusal is an error of the test. */
export function factsOf(layout: Layout, kinds: PieceKinds, options: MeasureOptions): ReadonlyMap<MeasureId, Fact> {
  const measured = measureBuild(layout, kinds, options);
  if (!measured.ok) throw new Error(`refused: ${JSON.stringify(measured.issues)}`);
  return new Map(measured.value.facts.map((fact) => [fact.id, fact]));
}

/** The fact of that id, which must have been measured. */
export function measuredFact(facts: ReadonlyMap<MeasureId, Fact>, id: MeasureId): MeasuredFact {
  const fact = facts.get(id);
  if (fact?.status !== 'measured') throw new Error(`${id} is not measured: ${JSON.stringify(fact)}`);
  return fact;
}

export const valueIn = (facts: ReadonlyMap<MeasureId, Fact>, id: MeasureId): number => measuredFact(facts, id).value;

export const toleranceIn = (facts: ReadonlyMap<MeasureId, Fact>, id: MeasureId): number =>
  measuredFact(facts, id).tolerance;

/** Relative. Outlines are walked on a grid of 1e-6 mm, on figures of some 100 mm; all else is exact to rounding. */
const RELATIVE = 1e-7;

/** The facts have the values worked out by hand. */
export function expectFacts(facts: ReadonlyMap<MeasureId, Fact>, byHand: Partial<Record<MeasureId, number>>): void {
  for (const [id, expected] of Object.entries(byHand) as [MeasureId, number][]) {
    expectNear(valueIn(facts, id), expected, { absolute: RELATIVE * Math.max(1, Math.abs(expected)) }, id);
  }
}
