// Reports on builds worked out by hand. A cube of 50 on a slab of 60 x 40 x 30, both centred: 80 mm high; seen from
// above 2400 of the slab and twice 5 x 50 of the cube, 2900 mm2; 72 000 + 125 000 mm3.

import { describe, expect, it } from 'vitest';
import {
  attempt,
  challenge,
  group,
  KIT,
  laid,
  numbersOnly,
  reportOn,
  STATICS,
} from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Report } from '../report-types.ts';
import type { Challenge, Group } from '../types.ts';
import type { Belonging } from './evaluate.ts';
import { evaluate } from './evaluate.ts';

const fact = (report: Report, id: string) => {
  const found = report.facts.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no fact ${id}`);
  return found;
};
const value = (report: Report, id: string) => fact(report, id).value;

const belonging = (at: Challenge, by: Group = group('terns')): Belonging => ({ challenge: at, group: by, events: [] });

describe('facts of a report', () => {
  it('holds the measures of the layout', () => {
    const report = reportOn(attempt());
    // The drop is exact to 1e-9 mm, areas and volumes to rounding.
    expectNear(value(report, 'height') ?? Number.NaN, 80, { absolute: 1e-9 });
    expectNear(value(report, 'footprint-area') ?? Number.NaN, 2900, { relative: 1e-9 });
    expectNear(value(report, 'base-area') ?? Number.NaN, 2400, { relative: 1e-9 });
    expectNear(value(report, 'volume') ?? Number.NaN, 197_000, { relative: 1e-12 });
    expect(value(report, 'pieces')).toBe(2);
    expect(fact(report, 'height').source).toBe('predicted');
    expect(fact(report, 'height').observed).toBeNull();
  });

  it("takes the group's own sizes of a kind, all of them, and the kit's of the others", () => {
    const own = group('terns', { slab: { length: 61, width: 43, height: 33.5 } });
    const report = reportOn(attempt(), challenge(), own);
    expectNear(value(report, 'height') ?? Number.NaN, 83.5, { absolute: 1e-9 });
    expectNear(value(report, 'base-area') ?? Number.NaN, 61 * 43, { relative: 1e-9 });
  });

  it('measures as the challenge says: counting, base, ruler', () => {
    const onEdge = challenge({ base: 'hull-of-contacts', ruler: 'quarter-inch', counting: 'flat-only' });
    const report = reportOn(attempt(), onEdge);
    // Two lengths read to a quarter of an inch: u = 1.83308710468 mm each (computed), doubled, times root 2.
    expectNear(fact(report, 'height').tolerance, 2 * Math.SQRT2 * 1.83308710468, { relative: 1e-6 });
  });

  it('counts the pieces of each kind', () => {
    const report = reportOn(attempt({ layout: numbersOnly('cube', 'slab', 'cube') }));
    expect([value(report, 'kind:slab'), value(report, 'kind:cube'), value(report, 'pieces')]).toEqual([1, 2, 3]);
    const none = reportOn(attempt({ layout: laid('slab') }));
    expect([value(none, 'kind:slab'), value(none, 'kind:cube')]).toEqual([1, 0]);
  });

  it('does not take pieces that nobody listed for none', () => {
    const report = reportOn(attempt({ layout: numbersOnly(), observed: { heightReadingsMm: [412] } }));
    expect([value(report, 'kind:slab'), value(report, 'pieces'), value(report, 'height')]).toEqual([null, null, 412]);
    expect(fact(report, 'kind:slab').source).toBeNull();
  });

  it('takes the mean of the marks that judges gave', () => {
    const judging = challenge({
      criteria: [
        { id: 'idea', name: 'Idea' },
        { id: 'craft', name: 'Craft' },
      ],
    });
    const marks = [
      { judge: 'Ada', criterion: 'idea', mark: 3 },
      { judge: 'Ben', criterion: 'idea', mark: 4 },
      { judge: 'Cleo', criterion: 'idea', mark: 4 },
    ];
    const report = reportOn(attempt({ judged: marks }), judging);
    expectNear(value(report, 'judged:idea') ?? Number.NaN, 11 / 3, { relative: 1e-15 });
    expect(fact(report, 'judged:idea').source).toBe('judged');
    expect([value(report, 'judged:craft'), fact(report, 'judged:craft').source]).toEqual([null, null]);
  });
});

describe('points and rules of a report', () => {
  it('[A9] rows, less the cost of broken rules, and what was given by hand', () => {
    const rules = challenge({
      requirements: [
        { id: 'no-tape', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 3.5 } },
        { id: 'hands-off', kind: 'judged', text: 'Hands off', consequence: { kind: 'costs', points: 100 } },
        {
          id: 'three-pieces',
          kind: 'measured',
          measure: 'pieces',
          comparison: 'exactly',
          limit: 3,
          consequence: { kind: 'must' },
        },
      ],
    });
    const byHand = [
      { points: 5, by: 'teacher', reason: 'helped the neighbours', at: '2026-03-05T10:40:00+01:00' },
      { points: -0.25, by: 'teacher', reason: 'late', at: '2026-03-05T10:41:00+01:00' },
    ];
    const report = reportOn(
      attempt({ answers: { 'no-tape': { kept: false }, 'hands-off': { kept: true } }, adjustments: byHand }),
      rules,
    );
    // 80 mm are 8 cm at 2 points: 16 - 3.5 + 5 - 0.25.
    expect(report.total).toBe(17.25);
    expect(report.points.map(({ times, points }) => [times, points])).toEqual([[8, 16]]);
    expect(report.requirements.map(({ verdict }) => verdict)).toEqual(['broken', 'kept', 'broken']);
    expect(report.adjustments).toEqual(byHand);
  });

  it('rows and rules may ask for kinds of piece and for marks', () => {
    const asking = challenge({
      criteria: [{ id: 'idea', name: 'Idea' }],
      points: [
        { id: 'cubes', measure: 'kind:cube', points: 7, per: 1, rounding: 'none' },
        { id: 'idea', measure: 'judged:idea', points: 2, per: 1, rounding: 'none' },
      ],
    });
    const report = reportOn(attempt({ judged: [{ judge: 'Ada', criterion: 'idea', mark: 3 }] }), asking);
    expect(report.total).toBe(13);
  });

  it('tells of more pieces than the kit has, and does not fail', () => {
    const report = reportOn(attempt({ layout: laid('cube', 'cube', 'cube', 'slab') }));
    expect(report.stockBreaches).toEqual([{ kind: 'cube', used: 3, stock: 2 }]);
    expectNear(value(report, 'height') ?? Number.NaN, 180, { absolute: 1e-9 });
    expect(reportOn(attempt({ layout: laid('cube', 'cube') })).stockBreaches).toEqual([]);
  });
});

describe('the state of an attempt', () => {
  it('[A1] absent and not taking part: nothing measured, no points, which is not 0', () => {
    for (const kind of ['absent', 'not-taking-part'] as const) {
      const report = reportOn(attempt({ state: { kind }, layout: laid('cube', 'cube') }));
      expect([report.facts, report.points, report.requirements, report.total]).toEqual([[], [], [], null]);
      expect(report.state).toEqual({ kind });
    }
  });

  it('[A2] a build that fell keeps what was measured of it', () => {
    for (const state of [{ kind: 'fell', afterSeconds: 7 }, { kind: 'fell-before-measuring' }] as const) {
      const report = reportOn(attempt({ state }));
      expectNear(value(report, 'height') ?? Number.NaN, 80, { absolute: 1e-9 });
      expect(fact(report, 'height').source).toBe('predicted');
      expect(report.state).toEqual(state);
    }
  });

  it('carries over who confirmed it, when it was made and whether it was chosen', () => {
    const report = reportOn(attempt({ confirmedBy: null, chosen: true }));
    expect(report).toMatchObject({
      engineVersion: '0.1.0',
      challenge: 'tall',
      group: 'terns',
      attempt: 'first-try',
      at: '2026-03-05T10:20:00+01:00',
      confirmedBy: null,
      chosen: true,
    });
  });
});

describe('what evaluate refuses', () => {
  it('tells what is wrong with challenge and attempt together, with paths', () => {
    const wrong = challenge({ points: [{ id: 'row', measure: 'weight', points: 2, per: 10, rounding: 'down' }] });
    const evaluated = evaluate(attempt({ at: 'today', answers: { tape: { kept: true } } }), belonging(wrong), STATICS);
    expect(evaluated).toEqual({
      ok: false,
      issues: [
        { code: 'measure-unknown', path: ['challenge', 'points', 0, 'measure'], details: { measure: 'weight' } },
        { code: 'not-a-time', path: ['attempt', 'at'], details: {} },
        { code: 'requirement-unknown', path: ['attempt', 'answers', 'tape'], details: { requirement: 'tape' } },
      ],
    });
  });

  it('tells of pieces that the kit does not have at their place in the attempt', () => {
    expect(
      pathsOf(
        evaluate(
          attempt({ layout: laid('slab', 'cone') }),
          { challenge: challenge(), group: group('terns'), events: [] },
          STATICS,
        ),
      ),
    ).toEqual([['attempt', 'layout', 'pieces', 1, 'kind']]);
    expect(
      pathsOf(
        evaluate(
          attempt({ layout: numbersOnly('cone') }),
          { challenge: challenge(), group: group('terns'), events: [] },
          STATICS,
        ),
      ),
    ).toEqual([['attempt', 'layout', 'pieces', 0]]);
  });

  it('tells of impossible sizes where they were written: by the group, or in the kit', () => {
    const own = group('terns', { cube: { edge: -3 } });
    expect(pathsOf(evaluate(attempt(), belonging(challenge(), own), STATICS))).toEqual([
      ['group', 'measured', 'cube', 'edge'],
    ]);
    const kinds = KIT.kinds.map((kind) => ({
      ...kind,
      solid: { ...kind.solid, sizes: { ...kind.solid.sizes, edge: -3 } },
    }));
    const broken = challenge({ kit: { ...KIT, kinds } });
    expect(pathsOf(evaluate(attempt({ layout: laid('cube') }), belonging(broken), STATICS))).toEqual([
      ['challenge', 'kit', 'kinds', 0, 'solid', 'sizes', 'edge'],
      ['challenge', 'kit', 'kinds', 1, 'solid', 'sizes', 'edge'],
    ]);
  });

  it('throws when the records do not belong together', () => {
    expect(() => evaluate(attempt(), belonging(challenge({ id: 'low' })), STATICS)).toThrow(RangeError);
    expect(() => evaluate(attempt(), belonging(challenge(), group('puffins')), STATICS)).toThrow(RangeError);
  });
});

const pathsOf = (evaluated: ReturnType<typeof evaluate>) =>
  evaluated.ok ? [] : evaluated.issues.map(({ path }) => path);
