// What a rule gives for a piece, for its paper or for its time, and how far that lies apart.

import type { EvenPer, EvenRule } from './even-types.ts';
import { divisor } from './exact/fraction.ts';
import type { LabData, LabKind, LabRule } from './types.ts';

export interface EvenCosts {
  /** What a piece of each kind takes, a whole number above 0: 1, whole cm2 or half minutes. */
  readonly each: readonly bigint[];
  /** For how much of it the points are told. */
  readonly unit: number;
}

/** Throws RangeError where the paper or the minutes of a kind are not known. */
export function evenCosts({ kinds }: LabData, per: EvenPer): EvenCosts {
  switch (per) {
    case 'piece':
      return { each: kinds.map(() => 1n), unit: 1 };
    case '100-cm2':
      return { each: kinds.map(({ id, paperMm2 }) => whole(id, paperMm2, MM2_IN_CM2)), unit: 100 };
    case '10-minutes':
      return { each: kinds.map(({ id, minutes }) => whole(id, minutes, HALF_MINUTE)), unit: 10 / HALF_MINUTE };
  }
}

const MM2_IN_CM2 = 100;
const HALF_MINUTE = 0.5;

function whole(kind: LabKind['id'], amount: number | null, of: number): bigint {
  if (amount === null) throw new RangeError(`it is not known what ${kind} takes`);
  return BigInt(Math.max(1, Math.round(amount / of)));
}

export function withSpread(rule: LabRule, { each, unit }: EvenCosts): EvenRule {
  const values = rule.scores.map((score, k) => (score * unit) / Number(each[k] ?? 1n));
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const isShare = lowest >= 0 && highest > 0;
  return { ...rule, values, lowest, highest, gap: highest - lowest, share: isShare ? lowest / highest : null };
}

/** What as many pieces of each kind have as take equally much together: the least such number of pieces. */
export function forAlikeCosts(
  measures: readonly (readonly bigint[])[],
  { each }: EvenCosts,
): readonly (readonly bigint[])[] {
  const all = each.reduce((common, one) => (common / divisor(common, one)) * one, 1n);
  return measures.map((own, k) => own.map((count) => (count * all) / (each[k] ?? 1n)));
}
