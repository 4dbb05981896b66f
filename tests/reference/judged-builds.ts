// Builds of real solids for the tests of stability, in a few words. mm, grams.

import type { LaidPiece, Material, SolidSpec, Stability, StabilityQuestion, WithoutPiece } from '@cairnmark/geometry';
import { noTabs, stabilityOf, withoutPiece } from '@cairnmark/geometry';
import { solidsOf } from './stacked-builds.ts';

export const LIMITS = { solves: 120, pivots: 20_000, trials: 400 };
export const FULL: Material = { kind: 'full', densityGPerCm3: 0.5 };
export const SHELL: Material = { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: false };
export const OPEN_SHELL: Material = { ...SHELL, base: 'open' };

/** One material and one friction throughout; `more` changes what the test is about. */
export function question(
  pieces: readonly LaidPiece[],
  specs: Readonly<Record<string, SolidSpec>>,
  material: Material,
  friction: number,
  more: Partial<StabilityQuestion> = {},
): StabilityQuestion {
  const surface = { material: 'all', friction };
  return {
    pieces,
    solids: solidsOf(specs),
    stuff: new Map(Object.keys(specs).map((kind) => [kind, { material, surface }])),
    table: surface,
    pairs: [],
    tabsOf: noTabs,
    rulerStepMm: 1,
    slackMm: 0,
    solver: null,
    limits: LIMITS,
    ...more,
  };
}

/** What happens without a piece; a refused layout is an error of the test. */
export function judgedWithout(asked: StabilityQuestion, piece: number): WithoutPiece {
  const answer = withoutPiece(asked, piece);
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.issues)}`);
  return answer.value;
}

/** The answer; a refused layout is an error of the test. */
export function judged(asked: StabilityQuestion): Stability {
  const answer = stabilityOf(asked);
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.issues)}`);
  return answer.value;
}
