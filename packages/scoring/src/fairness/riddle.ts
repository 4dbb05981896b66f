// [F13] Guess the rule: the fewest scored pieces from which a rule can be told, and one more to try the guess on; and which
// rules of a family no piece of a kit tells apart.

import type { FamilyOnKit, Riddle, RiddleRule, RuleFamily, ScoredPiece } from './riddle-types.ts';
import { riddlePoints, rulesOf } from './rule-families.ts';
import { fewestThatTell } from './separating.ts';
import type { LabData } from './types.ts';

/** A riddle of the rule. Throws RangeError for a rule that is not of the family. */
export function riddle(data: LabData, family: RuleFamily, rule: RiddleRule): Riddle {
  const rules = rulesOf(family, data.rows.length);
  const isIt = (one: RiddleRule): boolean =>
    one.each === rule.each && one.rates.every((rate, j) => rate === rule.rates[j]);
  if (!rules.some(isIt)) throw new RangeError(`no rule of the family ${family}`);
  const points = riddlePoints(data, rule);
  const all = data.kinds.map(({ id }, k): ScoredPiece => ({ kind: id, points: points[k] ?? 0 }));
  const others = rules.map((one) => riddlePoints(data, one));
  const shown = fewestThatTell(
    others.map((theirs) => differing(points, theirs)),
    all.length,
  );
  const examples = all.filter((_, k) => shown.includes(k));
  const left = all.filter((_, k) => !shown.includes(k));
  return {
    family,
    rule,
    examples,
    check: checkOf(left, examples, data),
    all,
    sameAs: rules.filter((one, k) => !isIt(one) && differing(points, others[k] ?? []).length === 0),
  };
}

/** One that tells something new: other points than the examples; else another solid that earns some; else what is left. */
function checkOf(
  left: readonly ScoredPiece[],
  examples: readonly ScoredPiece[],
  { kinds }: LabData,
): ScoredPiece | null {
  const counts = ({ kind }: ScoredPiece): string => kinds.find(({ id }) => id === kind)?.measures.join() ?? '';
  const isOther = (piece: ScoredPiece): boolean => !examples.some((example) => counts(example) === counts(piece));
  const isFresh = (piece: ScoredPiece): boolean => !examples.some((example) => example.points === piece.points);
  const others = left.filter(isOther);
  return left.find(isFresh) ?? others.find(({ points }) => points !== 0) ?? others[0] ?? left[0] ?? null;
}

/** What the kit can tell apart of the family. */
export function familyOnKit(data: LabData, family: RuleFamily): FamilyOnKit {
  const rules = rulesOf(family, data.rows.length);
  const groups = new Map<string, { readonly points: readonly number[]; readonly rules: RiddleRule[] }>();
  for (const rule of rules) {
    const points = riddlePoints(data, rule);
    const group = groups.get(points.join()) ?? { points, rules: [] };
    group.rules.push(rule);
    groups.set(points.join(), group);
  }
  const different = [...groups.values()];
  const pairs = different.flatMap(({ points }, k) =>
    different.slice(k + 1).map((other) => differing(points, other.points)),
  );
  const shown = fewestThatTell(pairs, data.kinds.length);
  return {
    family,
    rules: rules.length,
    different: different.length,
    alike: different.filter((group) => group.rules.length > 1).map((group) => group.rules),
    examplesForAll: data.kinds.filter((_, k) => shown.includes(k)).map(({ id }) => id),
  };
}

/** Positions of the kinds that the two score otherwise. */
const differing = (points: readonly number[], others: readonly number[]): readonly number[] =>
  points.flatMap((one, k) => (one === others[k] ? [] : [k]));
