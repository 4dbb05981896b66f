import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  attempt,
  challenge,
  classOf,
  group,
  laid,
  numbersOnly,
  STATICS,
} from '../../../../tests/reference/small-class.ts';
import { share } from '../../../../tests/tools/share.ts';
import { reportOf } from '../evaluate/report.ts';
import type { Attempt, ClassRecord } from '../types.ts';
import { rememberedReports } from './remembered-reports.ts';
import { scoreClass } from './score-class.ts';

const LOW = challenge({ id: 'low', attemptCounts: 'last' });
const GROUPS = ['terns', 'puffins', 'eiders'];
const attempts = GROUPS.flatMap((by): Attempt[] => [
  attempt({ id: `${by}-1`, group: by, layout: laid('slab', 'cube') }),
  attempt({
    id: `${by}-2`,
    group: by,
    challenge: 'low',
    layout: numbersOnly('slab'),
    observed: { heightReadingsMm: [350] },
  }),
]);
const CLASS = classOf({ groups: GROUPS.map((id) => group(id)), challenges: [challenge(), LOW], attempts });

/** A worker is handed copies. */
const copied = (record: ClassRecord): ClassRecord => structuredClone(record);

function counting() {
  const asked: string[] = [];
  const evaluator = rememberedReports((one, setting) => {
    asked.push(one.id);
    return reportOf(one, setting);
  });
  const score = (record: ClassRecord) => scoreClass(copied(record), STATICS, evaluator());
  /** The attempts that were evaluated anew since the last look. */
  const anew = (): readonly string[] => asked.splice(0);
  return { score, anew };
}

const changed = (record: ClassRecord, at: number, change: Partial<Attempt>): ClassRecord => ({
  ...record,
  attempts: record.attempts.map((one, k) => (k === at ? { ...one, ...change } : one)),
});

describe('reports kept from one scoring to the next', () => {
  it('are all there the second time, and the score is that of a fresh one', () => {
    const { score, anew } = counting();
    expect(score(CLASS)).toEqual(scoreClass(CLASS, STATICS));
    expect(anew()).toHaveLength(attempts.length);
    expect(score(CLASS)).toEqual(scoreClass(CLASS, STATICS));
    expect(anew()).toEqual([]);
  });

  it('of one changed attempt make just that one be evaluated anew, with the score of a fresh one (seed 6120)', () => {
    const change = fc.oneof(
      fc.record({
        observed: fc.record({ heightReadingsMm: fc.array(fc.integer({ min: 50, max: 500 }), { maxLength: 3 }) }),
      }),
      fc.constantFrom<Partial<Attempt>>(
        { confirmedBy: null },
        { state: { kind: 'absent' } },
        { state: { kind: 'fell', afterSeconds: 2 } },
        { adjustments: [{ points: -3, by: 'Ms Reid', reason: 'late', at: '2026-03-05T11:00:00+01:00' }] },
        { layout: laid('cube', 'slab') },
      ),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(attempts.length - 1), change), { maxLength: 4 }), (steps) => {
        const { score, anew } = counting();
        score(CLASS);
        anew();
        let record = CLASS;
        for (const [at, what] of steps) {
          const next = changed(record, at, what);
          const isOther = JSON.stringify(next) !== JSON.stringify(record);
          record = next;
          expect(score(record)).toEqual(scoreClass(record, STATICS));
          expect(anew()).toEqual(isOther ? [record.attempts[at]?.id] : []);
        }
      }),
      { seed: 6120, numRuns: share(40, 6) },
    );
  });

  it('are not used when the challenge, the group or the strokes have changed', () => {
    const { score, anew } = counting();
    score(CLASS);
    anew();
    const cheaper = { ...CLASS, challenges: [challenge({ points: [] }), LOW] };
    expect(score(cheaper)).toEqual(scoreClass(cheaper, STATICS));
    expect(anew()).toEqual(GROUPS.map((by) => `${by}-1`));
    const renamed = { ...cheaper, groups: cheaper.groups.map((one) => ({ ...one, name: `${one.name}!` })) };
    expect(score(renamed)).toEqual(scoreClass(renamed, STATICS));
    expect(anew()).toHaveLength(attempts.length);
  });

  it('are of the class at hand alone: one that was away in between is evaluated anew', () => {
    const { score, anew } = counting();
    score(CLASS);
    score({ ...CLASS, attempts: attempts.slice(1) });
    anew();
    score(CLASS);
    expect(anew()).toEqual(['terns-1']);
  });

  it('without a solver do not stand for those with one', () => {
    const asked: string[] = [];
    const evaluator = rememberedReports((one, setting) => {
      asked.push(setting.statics.solver?.name ?? 'none');
      return reportOf(one, setting);
    });
    const solver = { name: 'never asked', open: () => Promise.reject(new Error('asked')) as never };
    const record = { ...CLASS, attempts: attempts.slice(0, 1) };
    for (const _ of [1, 2]) {
      const evaluate = evaluator();
      scoreClass(record, { ...STATICS, solver: null }, evaluate);
      scoreClass(record, { ...STATICS, solver }, evaluate);
    }
    expect(asked).toEqual(['none', 'never asked']);
  });
});
