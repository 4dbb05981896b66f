// Height: the highest point above the table, mm. Where pieces stand each on top of the one below, the working is the
// sum of their heights; else it names the highest piece. With a traced outline it is the height that was read.

import type { Expr, Quantity, Step } from '../../kernel/formula.ts';
import { step, sum, sym } from '../../kernel/formula.ts';
import { SAME_LENGTH_MM } from '../../kernel/tolerance.ts';
import { mm } from '../../solids/types.ts';
import type { PlacedPiece, Stack } from '../../stack/types.ts';
import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import type { Working, WorkingPart } from '../types.ts';

export const height: MeasureDefinition = {
  id: 'height',
  unit: 'mm',
  measure: ({ stack, heightRead }) =>
    stack.shown ? findingOf(stack, heightOfStack) : findingOf(heightRead, heightAsRead),
};

function heightOfStack(stack: Stack): { value: number; working: Working } {
  const highest = stack.pieces.reduce((best, piece) => (piece.topMm > best.topMm ? piece : best));
  const tower = towerBelow(highest, stack);
  return tower === null ? heightOfPiece(highest) : sumOfTower(tower);
}

/**
 * The pieces from the table up to `top`, when each stands on the highest level of the one below; null otherwise, for
 * instance under a ball that sits between two boxes.
 */
function towerBelow(top: PlacedPiece, stack: Stack): readonly PlacedPiece[] | null {
  const tower: PlacedPiece[] = [];
  let piece: PlacedPiece | undefined = top;
  while (piece !== undefined) {
    tower.unshift(piece);
    if (Math.abs(piece.bottomMm) <= SAME_LENGTH_MM) return tower;
    piece = carrierOf(piece, stack);
  }
  return null;
}

function carrierOf(piece: PlacedPiece, stack: Stack): PlacedPiece | undefined {
  return stack.supports
    .filter((support) => support.upper === piece.index)
    .map(({ lower }) => (lower === 'table' ? undefined : stack.pieces[lower]))
    .find((lower) => lower !== undefined && Math.abs(piece.bottomMm - lower.topMm) <= SAME_LENGTH_MM);
}

function sumOfTower(tower: readonly PlacedPiece[]): { value: number; working: Working } {
  const parts = tower.map(partOf);
  const terms: Expr[] = [];
  const inputs: Record<string, Quantity> = {};
  for (const [index, part] of parts.entries()) {
    const symbol = `h${index + 1}`;
    terms.push(sym(symbol));
    inputs[symbol] = mm(part.each);
  }
  return workedOut('sum-of-pieces', step('h', sum(...terms), inputs, 'mm'), parts);
}

function heightOfPiece(piece: PlacedPiece): { value: number; working: Working } {
  const part = partOf(piece);
  const inputs = { b: mm(piece.bottomMm), p: mm(part.each) };
  return workedOut('highest-point', step('h', sum(sym('b'), sym('p')), inputs, 'mm'), [part]);
}

function heightAsRead(heightMm: number): { value: number; working: Working } {
  return workedOut('highest-point', step('h', sym('r'), { r: mm(heightMm) }, 'mm'), []);
}

function partOf(piece: PlacedPiece): WorkingPart {
  return { kind: piece.kind, times: 1, each: piece.topMm - piece.bottomMm, unit: 'mm', steps: [] };
}

function workedOut(
  method: Working['method'],
  line: Step,
  parts: readonly WorkingPart[],
): { value: number; working: Working } {
  return { value: line.result.value, working: { method, steps: [line], parts } };
}
