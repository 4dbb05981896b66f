// Changes to the settings of a challenge that stand beside its points and rules: places, grade, what is shown, own results,
// the supply game, which height counts.

import type { Challenge, GradePreset, HeightSource } from '@cairnmark/engine';
import { isShown, presetOf, rulerFor } from '@cairnmark/engine';
import type { RulerId } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { RankingKey, SupplyRule } from '@cairnmark/scoring';
import { SUPPLY_FACT_IDS } from '@cairnmark/scoring';
import type { Alter } from './challenge-changes.ts';
import { stepOnRuler } from './usual-step.ts';

/** The first key of the ranking is 0, then come the tie-breaks. */
export const changeKey =
  (place: number, change: (key: RankingKey) => RankingKey): Alter =>
  (challenge) =>
    withKeys(
      challenge,
      keysOf(challenge).map((key, k) => (k === place ? change(key) : key)),
    );

export const addKey =
  (key: RankingKey): Alter =>
  (challenge) =>
    withKeys(challenge, [...keysOf(challenge), key]);

/** The last one stays: something has to decide. */
export const removeKey =
  (place: number): Alter =>
  (challenge) =>
    withKeys(
      challenge,
      keysOf(challenge).filter((_, k) => k !== place),
    );

/** A step of -1 asks it earlier, one of 1 later. */
export const moveKey =
  (place: number, step: -1 | 1): Alter =>
  (challenge) =>
    withKeys(challenge, moved(keysOf(challenge), place, step));

export const keysOf = ({ ranking }: Challenge): readonly RankingKey[] => [ranking.first, ...ranking.tieBreaks];

function withKeys(challenge: Challenge, [first, ...tieBreaks]: readonly RankingKey[]): Challenge {
  return first === undefined ? challenge : { ...challenge, ranking: { first, tieBreaks } };
}

/** The list with the item at `place` one step on; as it was where there is nothing to change places with. */
export function moved<T>(list: readonly T[], place: number, step: -1 | 1): readonly T[] {
  const [one, other] = [list[place], list[place + step]];
  if (one === undefined || other === undefined) return list;
  return list.map((item, k) => (k === place ? other : k === place + step ? one : item));
}

/** Another ruler. Heights that were compared in whole divisions of the old one are compared in those of the new one. */
export const withRuler =
  (ruler: RulerId): Alter =>
  (challenge) => ({
    ...withKeys(
      challenge,
      keysOf(challenge).map((key) => stepOnRuler(key, challenge.ruler, ruler)),
    ),
    ruler,
  });

/**
 * Ruler, pi and what is hidden as the grade has it; what points, places or rules ask for stays shown. A class that measures
 * in inches goes on in inches.
 */
export const withGrade =
  (grade: GradePreset): Alter =>
  (challenge) => {
    const { pi, hidden } = presetOf(grade);
    return {
      ...withRuler(rulerFor(grade, unitsOf(challenge)))(challenge),
      gradePreset: grade,
      own: { ...challenge.own, pi },
      hidden: hidden.filter((measure) => !isAskedFor(measure, challenge)),
    };
  };

/** The units that the rulers of the challenge have. */
export const unitsOf = ({ ruler }: Pick<Challenge, 'ruler'>): 'cm' | 'in' =>
  rulerOf(ruler).unit === 'in' ? 'in' : 'cm';

/** Whether points, places, rules or rewards ask for the measure, so that it is shown in any case. */
export const isAskedFor = (measure: string, challenge: Challenge): boolean =>
  isShown(measure, { ...challenge, hidden: [measure] });

export const withShown =
  (measure: string, shown: boolean): Alter =>
  (challenge) => {
    const others = challenge.hidden.filter((one) => one !== measure);
    return { ...challenge, hidden: shown ? others : [...others, measure] };
  };

export const withSupply =
  (supply: SupplyRule | null): Alter =>
  (challenge) => ({
    ...challenge,
    supply,
    hidden: supply === null ? challenge.hidden.filter((one) => !EARNED.has(one)) : challenge.hidden,
  });

/** Measures that there are only where pieces are earned in a game. */
const EARNED: ReadonlySet<string> = new Set(SUPPLY_FACT_IDS);

/** What an own result of the measure earns; null: nothing. */
export const withReward =
  (measure: string, points: number | null): Alter =>
  (challenge) => {
    const { rewards } = challenge.own;
    const next =
      points === null
        ? rewards.filter((one) => one.measure !== measure)
        : rewards.some((one) => one.measure === measure)
          ? rewards.map((one) => (one.measure === measure ? { measure, points } : one))
          : [...rewards, { measure, points }];
    return { ...challenge, own: { ...challenge.own, rewards: next } };
  };

/** A height of this source counts too, after those that count already, or counts no more. One of them stays. */
export const withHeight =
  (source: HeightSource, counts: boolean): Alter =>
  (challenge) => {
    const others = challenge.heightCounts.filter((one) => one !== source);
    if (counts) return { ...challenge, heightCounts: [...others, source] };
    return others.length === 0 ? challenge : { ...challenge, heightCounts: others };
  };

export const moveHeight =
  (place: number, step: -1 | 1): Alter =>
  (challenge) => ({ ...challenge, heightCounts: moved(challenge.heightCounts, place, step) });
