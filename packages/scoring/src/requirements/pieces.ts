// Rules about which pieces may be used, and how many of them. Rules [Q6] and [Q7] of RULES.md.

import type { PieceBreach, Pieces, RequirementLine } from '../types.ts';

type PiecesVerdict = Pick<RequirementLine, 'verdict' | 'measure' | 'breaches'>;

/** Facts that tell that pieces are missing: those of a build, and those that its group earned. */
const USED_ID = 'pieces';
const EARNED_ID = 'earned:pieces';

/** Broken by every piece of a kind that is not listed. */
export function kindsVerdict(kinds: readonly string[], used: Pieces): PiecesVerdict {
  if (used === null) return unknown(USED_ID);
  return verdictOf(used, (kind) => (kinds.includes(kind) ? Number.POSITIVE_INFINITY : 0));
}

/** Broken by every kind of which more pieces are used than the group earned. */
export function earnedVerdict(used: Pieces, earned: Pieces): PiecesVerdict {
  if (used === null) return unknown(USED_ID);
  if (earned === null) return unknown(EARNED_ID);
  return verdictOf(used, (kind) => (Object.hasOwn(earned, kind) ? (earned[kind] ?? 0) : 0));
}

const unknown = (measure: string): PiecesVerdict => ({ verdict: 'not-measured', measure, breaches: [] });

function verdictOf(used: NonNullable<Pieces>, allowedOf: (kind: string) => number): PiecesVerdict {
  const breaches = Object.entries(used)
    .map(([kind, count]): PieceBreach => ({ kind, used: count, allowed: allowedOf(kind) }))
    .filter((one) => one.used > one.allowed);
  return { verdict: breaches.length > 0 ? 'broken' : 'kept', measure: null, breaches };
}
