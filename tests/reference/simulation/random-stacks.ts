// Stacks of 3 to 8 pieces drawn by lot: towers, heaps beside each other and bridges, put down with more or less care.

import type { LaidPiece } from '@cairnmark/geometry';
import type { Dice } from '../dice.ts';
import { diceOf } from '../dice.ts';
import { put } from '../stacked-builds.ts';
import { KIT, kindOf } from './kit.ts';

/** The stacks that the tests and the table take: their seed and their number. */
export const STACKS = { seed: 271828, count: 500 };

/** The first `count` stacks of a seed. */
export function randomStacks(seed: number, count: number): readonly (readonly LaidPiece[])[] {
  const dice = diceOf(seed);
  return Array.from({ length: count }, () => randomStack(dice));
}

/** Kinds with a level top, and kinds that end a heap. A common kind stands twice. */
const FLAT = Object.keys(KIT).filter((name) => kindOf(name).topMm > 0);
const LAST = Object.keys(KIT).filter((name) => kindOf(name).topMm === 0);

/** Offsets as a share of those at which the middle of a piece is at the edge of what is below it. */
const CARE = [0.1, 0.3, 0.5, 0.8];

function randomStack(dice: Dice): readonly LaidPiece[] {
  const count = dice.whole(3, 8);
  const care = dice.oneOf(CARE);
  const pieces = [anyTurn(dice, dice.oneOf(FLAT), 0, 0)];
  while (pieces.length < count) {
    const left = count - pieces.length;
    const tops = pieces.filter(({ kind }) => kindOf(kind).topMm > 0);
    const what = dice.between(0, 1);
    if (left > 1 && what < 0.12) {
      pieces.push(anyTurn(dice, dice.oneOf(FLAT), dice.between(-70, 70), dice.between(-70, 70)));
    } else if (left > 1 && what < 0.4) {
      pieces.push(...bridge(dice, dice.oneOf(tops), care));
    } else {
      const kinds = left === 1 || dice.between(0, 1) < 0.1 ? [...FLAT, ...LAST, ...LAST] : FLAT;
      pieces.push(onTop(dice, dice.oneOf(kinds), tops.at(-1)!, care));
    }
  }
  return pieces;
}

function onTop(dice: Dice, kind: string, below: LaidPiece, care: number): LaidPiece {
  const off = care * kindOf(below.kind).topMm;
  return anyTurn(dice, kind, below.xMm + dice.between(-off, off), below.yMm + dice.between(-off, off));
}

/** A second pillar like the first at some distance, and a lintel over both. */
function bridge(dice: Dice, first: LaidPiece, care: number): readonly LaidPiece[] {
  const angle = dice.between(-Math.PI, Math.PI);
  const apart = dice.between(55, 95);
  const from = (along: number, aside: number): readonly [number, number] => [
    first.xMm + along * Math.cos(angle) - aside * Math.sin(angle),
    first.yMm + along * Math.sin(angle) + aside * Math.cos(angle),
  ];
  const middle = from(apart / 2 + care * dice.between(-45, 45), care * dice.between(-12, 12));
  return [
    anyTurn(dice, first.kind, ...from(apart, 0)),
    put('lintel', ...middle, { turnRad: angle + care * dice.between(-0.3, 0.3) }),
  ];
}

/** Half of the pieces stand square to the edges of the table. */
function anyTurn(dice: Dice, kind: string, xMm: number, yMm: number): LaidPiece {
  return put(kind, xMm, yMm, { resting: kindOf(kind).resting, turnRad: dice.oneOf([0, dice.between(-3, 3)]) });
}
