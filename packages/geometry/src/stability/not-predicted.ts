// Pieces for which the statics of stiff, unglued pieces do not hold: as people see it on the real build, or because folded
// paper that touches with a curved surface dents instead of rolling.

import type { Hold } from '../stack/types.ts';
import type { Posed, StabilityQuestion } from './question.ts';
import { stuffOf } from './question.ts';

export interface NotPredicted {
  readonly piece: number;
  readonly why: Hold | 'paper-rolls';
}

export function notPredictedOf(question: StabilityQuestion, { stack, problem }: Posed): readonly NotPredicted[] {
  const held = question.pieces.flatMap(({ held: why }, piece) => (why === undefined ? [] : [{ piece, why }]));
  const rolling = new Set(problem.patches.flatMap((patch) => patch.rolling));
  const paper = stack.pieces
    .filter(({ index, kind }) => rolling.has(index) && stuffOf(question, kind).material.kind === 'folded-paper')
    .map(({ index }) => ({ piece: index, why: 'paper-rolls' as const }));
  return [...held, ...paper];
}
