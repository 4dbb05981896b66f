// Whatever is typed and tapped on the form, the class stays one that can be kept.

import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { factIds, POINTS_MOST, READY_IDS, readyChallenge, unitOf } from '@cairnmark/engine';
import { decode, encode, NAME_CHARACTERS_MOST, TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import type { Ruler, Unit } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { share } from '../../../../../tests/tools/share.ts';
import { entryOf } from '../../parts/number-entry.ts';
import { writtenUnits } from '../../parts/written-units.ts';
import type { Alter } from '../../store/challenge-changes.ts';
import {
  addCriterion,
  addRow,
  addRule,
  changeChallenge,
  changeCriterion,
  changeRow,
  changeRule,
  removeCriterion,
  removeRow,
  removeRule,
  withLimit,
} from '../../store/challenge-changes.ts';
import { addChallenge, addWithBuilds, copyOf, withOwnId } from '../../store/challenge-copies.ts';
import { putBack, removeChallenge } from '../../store/challenge-removal.ts';
import type { Change } from '../../store/class-changes.ts';
import { addPlace, changeDay, removeLastPlace, withPlacePoints, withWeight } from '../../store/day-changes.ts';
import { edit } from '../../store/edit-class.ts';
import { emptyChallenge } from '../../store/empty-challenge.ts';
import { plainText } from '../../store/plain-text.ts';
import {
  addKey,
  changeKey,
  moveHeight,
  moveKey,
  removeKey,
  withGrade,
  withHeight,
  withReward,
  withShown,
  withSupply,
} from '../../store/rule-settings.ts';
import { createSession } from '../../store/session.ts';
import type { ClassStorage } from '../../store/storage.ts';
import type { AmountLimits } from './amounts-of.ts';
import { limitsOf, ratesOf, usualLimit } from './amounts-of.ts';

/** One thing that somebody does: which control, which of the things it is about, what is typed. */
interface Tap {
  readonly control: number;
  readonly which: number;
  readonly other: number;
  readonly typed: string;
}

const typed = fc.oneof(
  fc.constantFrom(
    '5',
    '-2',
    '0',
    '',
    '1,250',
    '12.5 cm',
    '7 3/8 in',
    '1e9',
    '999999999999',
    '0.00001',
    '100',
    '4',
    '-0',
  ),
  fc.double({ noNaN: true, min: -2_000_000, max: 2_000_000 }).map(String),
  fc.string({ unit: 'binary', maxLength: 90 }),
);
const tap: fc.Arbitrary<Tap> = fc.record({ control: fc.nat(99), which: fc.nat(40), other: fc.nat(40), typed });

it('any taps and typed texts leave a class that a file takes, and most of them change it (seed 20260305)', () => {
  let [done, refused] = [0, 0];
  fc.assert(
    fc.property(
      fc.array(tap, { minLength: 1, maxLength: 25 }),
      fc.constantFrom('cm', 'sixteenth-inch'),
      (taps, ruler) => {
        const store = createSession(NOWHERE, ['en']);
        store.getState().begin('class-1', SMALL);
        for (const one of taps) {
          const { record, place } = store.getState();
          if (record === null) throw new RangeError('no class is open');
          const change = changeOf(one, record, place?.challenge ?? '', rulerOf(ruler));
          if (change === null) continue;
          if (edit(store, change).length === 0) done += 1;
          else refused += 1;
          const after = store.getState().record ?? SMALL;
          const [at] = after.challenges;
          if (after.challenges.every(({ id }) => id !== place?.challenge))
            store.getState().goTo({ challenge: at?.id ?? '' });
        }
        // Each step is checked by the edit itself; what comes of all of them is written and read.
        const file = encode('class', store.getState().record ?? SMALL);
        expect(decode(file, 'class').ok).toBe(true);
      },
    ),
    { numRuns: share(1000, 40), seed: 20_260_305 },
  );
  expect(done).toBeGreaterThan(3 * refused);
});

/** Two groups, two challenges, three tries: each step writes and reads all of it. */
const DEMO = demoClass();
const SMALL: ClassRecord = {
  ...DEMO,
  challenges: DEMO.challenges.slice(1).map((one) => ({ ...one, kit: { ...one.kit, kinds: one.kit.kinds } })),
  attempts: DEMO.attempts.filter(
    ({ challenge, group }) => challenge !== 'tall-light' && ['puffins', 'terns'].includes(group),
  ),
};

const NOWHERE: ClassStorage = {
  list: async () => [],
  open: async () => null,
  keep: async () => 'kept',
  remove: async () => 'kept',
};

/** What the form does for a tap; null where it does nothing, since what was typed is not taken. */
function changeOf({ control, which, other, typed }: Tap, record: ClassRecord, id: string, ruler: Ruler): Change | null {
  const challenge = record.challenges.find((one) => one.id === id);
  if (challenge === undefined) return null;
  const measures = [...factIds(challenge)];
  const measure = pick(measures, which);
  const one = oneOf(unitOf(measure), ruler);
  const number = (unit: Unit, limits: AmountLimits): number | null => {
    const entry = entryOf(typed, writtenUnits(unit, ruler), limits);
    return entry.kind === 'taken' ? entry.value : null;
  };
  const points = (least = -POINTS_MOST) => number('count', { least, most: POINTS_MOST, whole: false });
  const alter = (next: Alter): Change => changeChallenge(id, next);
  const withNumber = (value: number | null, next: (value: number) => Alter): Change | null =>
    value === null ? null : alter(next(value));
  const row = pick(challenge.points, other);
  const rule = pick(challenge.requirements, other);
  const criterion = pick(challenge.criteria, other);
  const name = plainText(typed).slice(0, NAME_CHARACTERS_MOST).trim();
  const text = plainText(typed).slice(0, TEXT_CHARACTERS_MOST).trim();
  const must = { kind: 'must' } as const;
  const controls: readonly (() => Change | null)[] = [
    () => (name === '' ? null : alter((now) => ({ ...now, name }))),
    () => alter(addRow({ measure, points: 1, per: one, rounding: 'none' })),
    () => row && alter(changeRow(row.id, (old) => ({ ...old, measure, per: one }))),
    () => row && withNumber(points(), (value) => changeRow(row.id, (old) => ({ ...old, points: value }))),
    () =>
      row &&
      withNumber(number(unitOf(row.measure), ratesOf(row.measure, oneOf(unitOf(row.measure), ruler))), (per) =>
        changeRow(row.id, (old) => ({ ...old, per })),
      ),
    () => row && withNumber(points(), (value) => changeRow(row.id, (old) => withLimit(old, 'capPoints', value))),
    () => row && withNumber(points(), (value) => changeRow(row.id, (old) => withLimit(old, 'floorPoints', value))),
    () => row && alter(changeRow(row.id, (old) => withLimit(old, 'capPoints', null))),
    () => row && alter(removeRow(row.id)),
    () =>
      alter(
        addRule({
          kind: 'measured',
          measure,
          comparison: 'at-least',
          limit: usualLimit(measure, one),
          consequence: must,
        }),
      ),
    () => (text === '' ? null : alter(addRule({ kind: 'judged', text, consequence: must }))),
    () =>
      alter(
        addRule({
          kind: 'only-kinds',
          kinds: challenge.kit.kinds.slice(which).map((kind) => kind.id),
          consequence: must,
        }),
      ),
    () => alter(addRule({ kind: 'only-earned', consequence: must })),
    () =>
      rule?.kind === 'measured'
        ? withNumber(number(unitOf(rule.measure), limitsOf(rule.measure)), (limit) =>
            changeRule(rule.id, () => ({ ...rule, limit })),
          )
        : null,
    () =>
      rule &&
      withNumber(points(0), (value) =>
        changeRule(rule.id, () => ({ ...rule, consequence: { kind: 'costs', points: value } })),
      ),
    () => rule && removeRule(id, rule.id),
    () => (name === '' ? null : alter(addCriterion(name))),
    () => (name === '' || !criterion ? null : alter(changeCriterion(criterion.id, name))),
    () => criterion && removeCriterion(id, criterion.id),
    () => alter(addKey({ by: measure, better: 'less', roundTo: one })),
    () => alter(changeKey(other % 3, (key) => ({ ...key, by: measure, roundTo: one }))),
    () =>
      withNumber(number('mm', limitsOf('height')), (roundTo) => changeKey(other % 3, (key) => ({ ...key, roundTo }))),
    () => alter(moveKey(which % 4, other % 2 === 0 ? 1 : -1)),
    () => alter(removeKey(which % 4)),
    () => alter(withGrade(pick(['grades-2-3', 'grades-4-5', 'grades-6-8'] as const, which))),
    () => alter(withShown(measure, other % 2 === 0)),
    () =>
      alter(
        withSupply({ ends: { kind: 'turns', turns: 1 + which }, handOver: 'at-a-touch', dropped: 'carrier-chooses' }),
      ),
    () => alter(withSupply(null)),
    () => withNumber(points(), (value) => withReward(pick(['volume', 'height', 'paper'] as const, which), value)),
    () => alter(withReward('volume', null)),
    () => alter(withHeight(pick(['ruler', 'photo', 'model'] as const, which), other % 2 === 0)),
    () => alter(moveHeight(which % 3, other % 2 === 0 ? 1 : -1)),
    () =>
      withNumber(number('mm', { least: 0, most: 100, whole: false }), (measuringErrorMm) => (now) => ({
        ...now,
        measuringErrorMm,
      })),
    () =>
      withNumber(number('mm', { least: 0.05, most: 50, whole: false }), (gapAllowanceMm) => (now) => ({
        ...now,
        gapAllowanceMm,
      })),
    () => (name === '' ? null : alter((now) => ({ ...now, labels: [...now.labels, name] }))),
    () => withNumber(points(), (value) => (now) => ({ ...now, fallen: { counts: 'points', points: value } })),
    () => {
      const weight = points(0);
      return weight === null ? null : withWeight(id, weight);
    },
    () => changeDay((day) => ({ ...day, kind: pick(['sum-of-points', 'mean-place'] as const, which) })),
    () => addPlace,
    () => removeLastPlace,
    () => {
      const value = points();
      return value === null ? null : withPlacePoints(which % 8, value);
    },
    () => addChallenge(copyOf(record, challenge), id),
    () => addWithBuilds(copyOf(record, challenge), id),
    () => addChallenge(withOwnId(record, readyChallenge(pick(READY_IDS, which), name || 'x', challenge.kit, null)), id),
    () => addChallenge(withOwnId(record, emptyChallenge(name || 'x', challenge)), id),
    () => (record.challenges.length < 2 ? null : removeChallenge(id)),
    () => putBack(SMALL, pick(SMALL.challenges, which)?.id ?? ''),
  ];
  return pick(controls, control)() ?? null;
}

/** One of the unit in which the class reads. */
function oneOf(unit: Unit, ruler: Ruler): number {
  const lengthMm = ruler.unit === 'in' ? 25.4 : 10;
  const ones = { mm: lengthMm, mm2: lengthMm ** 2, mm3: lengthMm ** 3, count: 1, ratio: 1, s: 1, rad: Math.PI / 180 };
  return ones[unit];
}

/** undefined of an empty list alone. */
const pick = <T>(list: readonly T[], number: number): T => list[number % list.length] as T;
