// The riddles of a challenge: for its grade, with its kit, counted its way. The same challenge always has the same riddles,
// so that a sheet and its answers belong together; another challenge has others.

import type { GradePreset } from '@cairnmark/engine';
import { isCountedRow, labKit, withRows } from '@cairnmark/engine';
import type { FamilyOnKit, LabData, Riddle, RiddleRule, RuleFamily } from '@cairnmark/scoring';
import { familyOnKit, riddle, rulesOf } from '@cairnmark/scoring';
import type { SheetContext } from './context.ts';

export interface SetRiddle {
  readonly family: RuleFamily;
  readonly onKit: FamilyOnKit;
  /** null: no rule of the family can be told on this kit. */
  readonly riddle: Riddle | null;
}

export interface Riddles {
  /** What pupils count on a piece in their hands. */
  readonly data: LabData;
  readonly riddles: readonly SetRiddle[];
}

export function riddlesOf({ challenge, ruler }: Pick<SheetContext, 'challenge' | 'ruler'>): Riddles {
  const kit = labKit(challenge, challenge.counting, ruler, {});
  const counted = kit.rows.filter(isCountedRow).map(({ id }) => id);
  const data = withRows(kit.data, (row) => counted.some((id) => id === row));
  const riddles = FAMILIES[challenge.gradePreset].map((family): SetRiddle => {
    const onKit = familyOnKit(data, family);
    return { family, onKit, riddle: chosen(data, family, onKit, challenge.id) };
  });
  return { data, riddles };
}

const FAMILIES: Readonly<Record<GradePreset, readonly RuleFamily[]>> = {
  'grades-2-3': ['one'],
  'grades-4-5': ['one', 'one+c'],
  'grades-6-8': ['two', 'minus'],
};

/** Of the rules that can be told one that takes two pieces or more: one scored piece is no riddle, where there is another. */
function chosen(data: LabData, family: RuleFamily, { alike }: FamilyOnKit, seed: string): Riddle | null {
  const looksLikeAnother = (rule: RiddleRule): boolean => alike.some((rules) => rules.some((one) => isSame(one, rule)));
  const rules = rulesOf(family, data.rows.length).filter((rule) => !looksLikeAnother(rule));
  const first = numberOf(`${seed} ${family}`) % Math.max(1, rules.length);
  const round = [...rules.slice(first), ...rules.slice(0, first)];
  const inTurn = [...round.filter((rule) => isTypical(family, rule)), ...round];
  let easy: Riddle | null = null;
  for (const rule of inTurn) {
    const one = riddle(data, family, rule);
    if (one.examples.length > 1) return one;
    easy ??= one;
  }
  return easy;
}

/** Has what the family is about: points for the piece, a second measure, something that takes. */
function isTypical(family: RuleFamily, { rates, each }: RiddleRule): boolean {
  const used = rates.filter((rate) => rate !== 0).length;
  return family === 'one' || (family === 'one+c' ? each > 0 : used === 2);
}

const isSame = (one: RiddleRule, other: RiddleRule): boolean =>
  one.each === other.each && one.rates.every((rate, j) => rate === other.rates[j]);

/** Of a text, whole and below 2^32. */
const numberOf = (text: string): number =>
  [...text].reduce((number, sign) => (Math.imul(number, 31) + (sign.codePointAt(0) ?? 0)) >>> 0, 7);
