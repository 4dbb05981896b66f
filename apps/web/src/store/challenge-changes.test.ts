import { demoClass } from '@cairnmark/demo';
import type { Challenge } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import {
  addCriterion,
  addRow,
  addRule,
  changeChallenge,
  removeCriterion,
  removeRule,
  withLimit,
} from './challenge-changes.ts';
import { addWithBuilds, copyOf } from './challenge-copies.ts';
import { withShown } from './rule-settings.ts';

const CLASS = demoClass();
const [TALL, , WALL] = CLASS.challenges as [Challenge, Challenge, Challenge];
const COPY = copyOf(CLASS, WALL);
/** A copy of Harbour Wall with its builds: answers and marks hang on its rules. */
const WITH_BUILDS = addWithBuilds(COPY, WALL.id)(CLASS);

describe('rows and rules', () => {
  it('get ids that are told apart, also where a measure is named with a colon', () => {
    const row = { measure: 'kind:cube', points: 1, per: 1, rounding: 'none' } as const;
    const twice = addRow(row)(addRow(row)(TALL));
    expect(twice.points.map(({ id }) => id)).toEqual(['height', 'kind-cube', 'kind-cube-2']);
    const rule = { kind: 'only-kinds', kinds: ['cube'], consequence: { kind: 'must' } } as const;
    const ruled = changeChallenge(TALL.id, (one) => addRule(rule)(addRule(rule)(one)))(CLASS);
    expect(ruled.challenges[0]?.requirements.map(({ id }) => id).slice(-2)).toEqual(['only-kinds', 'only-kinds-2']);
    expect(faultsOf('class', ruled)).toEqual([]);
  });

  it('lose a limit without a trace', () => {
    const [row] = TALL.points;
    if (row === undefined) throw new RangeError('Tall Light has no row');
    expect(withLimit(withLimit(row, 'capPoints', 30), 'capPoints', null)).toEqual(row);
  });

  it('a yes/no rule goes with the answers given to it, a criterion with its marks', () => {
    const answered = WITH_BUILDS.attempts.filter(
      ({ challenge, answers }) => challenge === COPY.id && 'no-tape' in answers,
    );
    expect(answered.length).toBeGreaterThan(0);
    const unruled = removeRule(COPY.id, 'no-tape')(WITH_BUILDS);
    expect(faultsOf('class', unruled)).toEqual([]);
    expect(unruled.attempts.filter(({ challenge }) => challenge !== COPY.id)).toEqual(CLASS.attempts);
    const rowless = changeChallenge(COPY.id, (one) => ({
      ...one,
      points: one.points.filter(({ measure }) => measure !== 'judged:idea'),
    }))(WITH_BUILDS);
    expect(faultsOf('class', removeCriterion(COPY.id, 'idea')(rowless))).toEqual([]);
    expect(faultsOf('class', removeCriterion(COPY.id, 'idea')(WITH_BUILDS)).map(({ code }) => code)).toEqual([
      'measure-unknown',
    ]);
  });

  it('a criterion that was hidden leaves nothing hidden that is not there', () => {
    const [hidden] = [addCriterion('Neat')(TALL)].map(withShown('judged:neat', false));
    const record = { ...CLASS, challenges: [hidden as Challenge], attempts: [] };
    expect(removeCriterion(TALL.id, 'neat')(record).challenges[0]?.hidden).toEqual([]);
  });
});
