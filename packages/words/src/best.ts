// The best possible build in sentences: what it reaches, over which builds that is the best, how it is put together, or why
// there is none; and what was not looked at. The answer comes from scoring, the rules and names from the challenge.

import type { BestPlan, Challenge } from '@cairnmark/engine';
import type { BestAnswer, BestGoal, BestTower, NoBuild, PutPiece } from '@cairnmark/scoring';
import type { ClassWords } from './class-words.ts';
import type { RestingName } from './solid-names.ts';
import type { TalkWords } from './talk.ts';
import type { Words } from './words.ts';

/** The words of the language, of the class and of the talk after the build. */
export interface BestVoice {
  readonly words: Words;
  readonly inClass: ClassWords;
  readonly talk: TalkWords;
}

/** Every line, the most important first. `plan` null: nobody works out a best build for this challenge. */
export function bestSentences(
  plan: BestPlan | null,
  answer: BestAnswer | null,
  challenge: Challenge,
  voice: BestVoice,
): readonly string[] {
  if (plan === null || answer === null) return [noGoal(challenge, voice)];
  return [...answerLines(answer, plan, challenge, voice), ...leftOutLines(plan, challenge, voice)];
}

/** What the goal is measured in: "40.8 cm", "12 points", "14°". */
export function bestValue(goal: BestGoal, value: number, { inClass }: BestVoice): string {
  switch (goal.kind) {
    case 'tallest':
    case 'tallest-on-smallest-base':
      return inClass.amount('height', value, 0);
    case 'tallest-for-width':
      return inClass.amount('height-to-width', value, 0);
    case 'most-points':
      return inClass.exactAmount('points', value);
    case 'greatest-tilt':
      return tiltOf(value, inClass);
  }
}

function noGoal({ ranking }: Challenge, { talk, inClass }: BestVoice): string {
  const { by } = ranking.first;
  return by === 'points' ? talk.say('best.no-rows') : talk.say('best.no-goal', { measure: inClass.label(by) });
}

function answerLines(answer: BestAnswer, plan: BestPlan, challenge: Challenge, voice: BestVoice): readonly string[] {
  const { talk } = voice;
  const { goal } = plan.task;
  const value = (of: number): string => bestValue(goal, of, voice);
  switch (answer.kind) {
    case 'best':
      return [
        headline(plan, answer, voice),
        scopeLine(answer, value, voice),
        ...towerLines(answer.tower, challenge, voice),
      ];
    case 'not-finished':
      return [
        talk.say('best.cut'),
        ...(answer.value === null ? [] : [talk.say('best.cut-so-far', { value: value(answer.value) })]),
        ...(Number.isFinite(answer.noMoreThan) && answer.noMoreThan > 0
          ? [talk.say('best.cut-most', { most: value(answer.noMoreThan) })]
          : []),
        ...(answer.tower === null ? [] : towerLines(answer.tower, challenge, voice)),
      ];
    case 'none':
      return noneLines(answer.why, challenge, voice);
  }
}

function headline(
  { task: { goal }, leftOut }: BestPlan,
  { value, tower: { baseMm2 }, scope }: Best,
  voice: BestVoice,
): string {
  const { talk, inClass, words } = voice;
  const told = { value: bestValue(goal, value, voice) };
  // What another build may pass is called the best of towers, and of nothing else.
  const isAny = scope === 'any';
  switch (goal.kind) {
    case 'tallest':
      return talk.say(isAny ? 'best.tallest' : 'best.tower-tallest', told);
    case 'tallest-on-smallest-base':
      return talk.say(isAny ? 'best.narrow' : 'best.tower-narrow', { ...told, base: baseText(baseMm2, inClass) });
    case 'tallest-for-width':
      return talk.say('best.width', told);
    case 'most-points':
      if (leftOut.rows.length === 0) return talk.say(isAny ? 'best.points' : 'best.tower-points', told);
      return talk.say(isAny ? 'best.points-for' : 'best.tower-points-for', {
        ...told,
        measures: words.listed([...new Set(goal.rows.map(({ measure }) => inClass.label(measure)))]),
      });
    case 'greatest-tilt':
      return talk.say('best.tilt', told);
  }
}

type Best = Extract<BestAnswer, { readonly kind: 'best' }>;

function scopeLine({ scope, ceiling }: Best, value: (of: number) => string, { talk }: BestVoice): string {
  if (scope === 'any') return talk.say('best.any');
  return ceiling === null ? talk.say('best.centred') : talk.say('best.centred-to', { most: value(ceiling) });
}

function towerLines({ pieces, beside, standsPush }: BestTower, challenge: Challenge, voice: BestVoice) {
  const { talk, inClass } = voice;
  const listed = (puts: readonly PutPiece[]): string => piecesText(puts, challenge, voice);
  return [
    talk.say('best.from-table', { pieces: listed(pieces) }),
    ...(beside.length === 0 ? [] : [talk.say('best.beside', { pieces: listed(beside) })]),
    talk.say('best.stands-to', { tilt: tiltOf(standsPush, inClass) }),
    ...(standsPush < CLOSE_PUSH ? [talk.say('best.close')] : []),
  ];
}

/** tan 3 degrees: below it a build is too close to call. */
const CLOSE_PUSH = Math.tan((3 * Math.PI) / 180);

/** "2 × Cube on its base, Cone on its base": alike and next to each other, told once. */
function piecesText(puts: readonly PutPiece[], challenge: Challenge, { talk, words }: BestVoice): string {
  const names: Readonly<Record<RestingName, string>> = words.names.restings;
  const told = puts.map(({ kind, way }) =>
    talk.say('best.piece', {
      kind: challenge.kit.kinds.find(({ id }) => id === kind)?.name ?? kind,
      side: names[way as RestingName],
    }),
  );
  const runs: { readonly text: string; count: number }[] = [];
  for (const text of told) {
    const last = runs.at(-1);
    if (last?.text === text) last.count += 1;
    else runs.push({ text, count: 1 });
  }
  return runs
    .map(({ text, count }) => (count === 1 ? text : talk.say('best.times', { count, piece: text })))
    .join(', ');
}

function noneLines(why: NoBuild, challenge: Challenge, voice: BestVoice): readonly string[] {
  const { talk, words, inClass } = voice;
  const pieces = (count: number): string => words.counted('pieces', count);
  switch (why.code) {
    case 'too-few-pieces':
      return [talk.say('best.too-few-pieces', { needed: pieces(why.needed), pieces: pieces(why.pieces) })];
    case 'too-few-carriers':
      return [talk.say('best.too-few-carriers', { needed: pieces(why.needed), most: pieces(why.most) })];
    case 'base-too-small':
      return [talk.say('best.base-too-small', { base: baseText(why.smallestMm2, inClass) })];
    case 'too-steep': {
      const count = why.greatest.pieces.length;
      const tilt = tiltOf(why.greatest.standsPush, inClass);
      return [
        talk.say('best.too-steep', { pieces: pieces(count), tilt }),
        talk.say('best.from-table', { pieces: piecesText(why.greatest.pieces, challenge, voice) }),
      ];
    }
    case 'rules-clash':
      return [talk.say('best.rules-clash')];
  }
}

function leftOutLines({ leftOut, takenAsMust }: BestPlan, challenge: Challenge, voice: BestVoice): readonly string[] {
  const { talk, words, inClass } = voice;
  const rules = (ids: readonly string[]): string =>
    words.listed(challenge.requirements.filter(({ id }) => ids.includes(id)).map((rule) => inClass.ruleTitle(rule)));
  const rows = challenge.points.filter(({ id }) => leftOut.rows.includes(id));
  const measures = words.listed([...new Set(rows.map(({ measure }) => inClass.label(measure)))]);
  return [
    ...(leftOut.requirements.length === 0 ? [] : [talk.say('best.rules-left', { rules: rules(leftOut.requirements) })]),
    ...(rows.length === 0 ? [] : [talk.say('best.rows-left', { measures })]),
    ...(takenAsMust.length === 0 ? [] : [talk.say('best.rules-kept', { rules: rules(takenAsMust) })]),
  ];
}

const tiltOf = (push: number, inClass: ClassWords): string => inClass.amount('stands-to', Math.atan(push), 0);
/** Areas are not read off a ruler: whole mm2 of a class in mm, tenths of a cm2. */
const baseText = (baseMm2: number, inClass: ClassWords): string => inClass.amount('base-area', baseMm2, BASE_SHOWN_MM2);
/** mm2. An area is shown to a third of this or so: what a base of paper is worth. */
const BASE_SHOWN_MM2 = 30;
