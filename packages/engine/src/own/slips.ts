// Which single slip gives the group's own value. A hint is only worth giving when it is the only one that fits: where
// two different slips do, or none, nothing is said.

import type { Fact, Unit } from '@cairnmark/geometry';
import type { Slip } from '../report-types.ts';
import type { ClassPi } from '../types.ts';
import { buildSlips } from './build-slips.ts';
import { otherPis, piOf } from './pi.ts';
import { pieceSlips } from './piece-slips.ts';
import type { Term } from './working-tree.ts';
import { EXACT, worth } from './working-tree.ts';

/** What the value would be with one slip. */
export interface SlipValue {
  readonly slip: Slip;
  readonly value: number;
}

/** How a fact is worked out in this class; of a value that was read, the value alone. */
export interface ClassWorking {
  readonly unit: Unit;
  readonly tolerance: number;
  /** All facts of the build. */
  readonly facts: readonly Fact[];
  readonly tree: Term;
  readonly expected: number;
  readonly pi: ClassPi;
}

/** The slip that gives a value which does not agree; null when there is none, or more than one. */
export function slipOf(own: number, working: ClassWorking): Slip | null {
  const fitting = slipValues(working).filter(({ value }) => explains(value, own, working));
  const [only, other] = new Set(fitting.map(({ slip }) => slip));
  return other === undefined ? (only ?? null) : null;
}

/** No unit. How near to a slip's value an own one must be: pupils round on the way. */
const ROUNDED_SHARE = 0.01;

/** True when the value with the slip is the own one within the error, and the slip makes most of the difference. */
function explains(value: number, own: number, { unit, tolerance, expected }: ClassWorking): boolean {
  const error = unit === 'count' ? EXACT : Math.max(tolerance, ROUNDED_SHARE * Math.abs(value), EXACT);
  return Math.abs(own - value) <= Math.min(error, Math.abs(value - expected) / 2);
}

function slipValues({ unit, facts, tree, expected, pi }: ClassWorking): readonly SlipValue[] {
  return [
    ...pieceSlips(tree, facts, piOf(pi)),
    ...buildSlips(tree, piOf(pi)),
    ...otherPis(pi).map((other): SlipValue => ({ slip: 'other-pi', value: worth(tree, other) })),
    ...unitSlips(expected, unit),
  ];
}

/** Centimetres written for millimetres, or the other way round. */
function unitSlips(expected: number, unit: Unit): readonly SlipValue[] {
  const mmInCm = MM_IN_CM[unit];
  if (mmInCm === undefined) return [];
  return [expected * mmInCm, expected / mmInCm].map((value) => ({ slip: 'cm-for-mm', value }));
}

const MM_IN_CM: Partial<Record<Unit, number>> = { mm: 10, mm2: 100, mm3: 1000 };
