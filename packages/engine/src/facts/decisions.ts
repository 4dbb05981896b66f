// Decisions of people on values: of several on one value the latest counts, and each stood in for the one before it. One
// that was taken back is as if it had never been made.

import { momentOf } from '../instant.ts';
import type { Decision } from '../types.ts';

/** A decision beside the others on its value. */
export interface DecisionMade {
  readonly decision: Decision;
  readonly state: 'counts' | 'replaced' | 'taken-back';
  /** The decision that it replaced; null: it replaced none, but what was measured, if anything was. */
  readonly replaces: Decision | null;
}

/** The decision on the measure that counts; null: nobody decided. */
export const decisionOn = (measure: string, decisions: readonly Decision[]): Decision | null =>
  standing(measure, decisions).at(-1) ?? null;

/** All decisions on an attempt, in their order in the record. */
export function decisionsMade(decisions: readonly Decision[]): readonly DecisionMade[] {
  return decisions.map((decision): DecisionMade => {
    if (decision.takenBack !== undefined) return { decision, state: 'taken-back', replaces: null };
    const all = standing(decision.measure, decisions);
    const k = all.indexOf(decision);
    return { decision, state: k === all.length - 1 ? 'counts' : 'replaced', replaces: all[k - 1] ?? null };
  });
}

/** Those on the measure that were not taken back, from the earliest to the latest; at one moment as in the record. */
const standing = (measure: string, decisions: readonly Decision[]): readonly Decision[] =>
  decisions
    .filter((decision) => decision.measure === measure && decision.takenBack === undefined)
    .sort((a, b) => momentOf(a.at) - momentOf(b.at));
