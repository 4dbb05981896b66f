import type { MeasureId } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, group, KIT, laid, numbersOnly } from '../../../../tests/reference/small-class.ts';
import type { Attempt, Challenge } from '../types.ts';
import { attemptIssues } from './attempt.ts';
import { challengeIssues } from './challenge.ts';
import { classIssues } from './class-record.ts';
import type { EngineIssue } from './issues.ts';

const told = (issues: readonly EngineIssue[]) => issues.map(({ code, path }) => [code, path.join('.')]);
const ofChallenge = (changes: Partial<Challenge>) => told(challengeIssues(challenge(changes), []));
const ofAttempt = (changes: Partial<Attempt>, at: Challenge = challenge()) =>
  told(attemptIssues(attempt(changes), at, []));

const ROW = { id: 'row', measure: 'height', points: 2, per: 10, rounding: 'down' } as const;
const HEIGHT = { by: 'height', better: 'more', roundTo: 1 } as const;
const COSTS = { kind: 'costs', points: 3 } as const;

describe('a challenge', () => {
  it('is in order when every name is known', () => {
    const everything = challenge({
      criteria: [{ id: 'idea', name: 'Idea' }],
      points: [ROW, { ...ROW, id: 'marks', measure: 'judged:idea' }, { ...ROW, id: 'cubes', measure: 'kind:cube' }],
      ranking: { first: { ...HEIGHT, by: 'points' }, tieBreaks: [{ ...HEIGHT, by: 'kind:slab' }] },
    });
    expect(challengeIssues(everything, [])).toEqual([]);
  });

  it('asks only for measures that there are', () => {
    const criteria = [{ id: 'idea', name: 'Idea' }];
    const unknown = ['judged:craft', 'kind:cone', 'points', 'weight'];
    const points = unknown.map((measure, k) => ({ ...ROW, id: `row-${k}`, measure }));
    expect(ofChallenge({ criteria, points })).toEqual(
      unknown.map((_, k) => ['measure-unknown', `points.${k}.measure`]),
    );
    const rule = {
      id: 'rule',
      kind: 'measured',
      measure: 'weight',
      comparison: 'at-most',
      limit: 7,
      consequence: COSTS,
    } as const;
    expect(ofChallenge({ requirements: [rule] })).toEqual([['measure-unknown', 'requirements.0.measure']]);
    const by = { ...HEIGHT, by: 'weight' };
    expect(ofChallenge({ ranking: { first: by, tieBreaks: [HEIGHT, by] } })).toEqual([
      ['measure-unknown', 'ranking.first.by'],
      ['measure-unknown', 'ranking.tieBreaks.1.by'],
    ]);
  });

  it('has every id once', () => {
    const twice = { id: 'a', name: 'A' };
    const rule = { id: 'rule', kind: 'judged', text: 'No tape', consequence: COSTS } as const;
    const kinds = [...KIT.kinds, ...KIT.kinds.slice(0, 1)];
    const kit = { ...KIT, kinds };
    expect(ofChallenge({ kit, criteria: [twice, twice], points: [ROW, ROW], requirements: [rule, rule] })).toEqual([
      ['id-twice', 'kit.kinds.2.id'],
      ['id-twice', 'criteria.1.id'],
      ['id-twice', 'points.1.id'],
      ['id-twice', 'requirements.1.id'],
    ]);
  });

  it('has pieces that are solids, used or not', () => {
    const kinds = KIT.kinds.map((kind) => ({ ...kind, solid: { ...kind.solid, sizes: { edge: -3 } } }));
    expect(ofChallenge({ kit: { ...KIT, kinds } })).toEqual([
      ['size-missing', 'kit.kinds.0.solid.sizes.length'],
      ['size-missing', 'kit.kinds.0.solid.sizes.width'],
      ['size-missing', 'kit.kinds.0.solid.sizes.height'],
      ['size-unknown', 'kit.kinds.0.solid.sizes.edge'],
      ['size-not-positive', 'kit.kinds.1.solid.sizes.edge'],
    ]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308, -1e308])('is not reckoned with %s', (n) => {
    expect(
      ofChallenge({
        gapAllowanceMm: n,
        measuringErrorMm: n,
        points: [{ ...ROW, points: n, per: n, capPoints: n }],
        requirements: [{ id: 'rule', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: n } }],
        ranking: { first: { ...HEIGHT, roundTo: n }, tieBreaks: [] },
      }),
    ).toEqual(
      [
        'gapAllowanceMm',
        'measuringErrorMm',
        'points.0.points',
        'points.0.per',
        'points.0.capPoints',
        'requirements.0.consequence.points',
        'ranking.first.roundTo',
      ].map((path) => ['number-out-of-range', path]),
    );
  });

  it('can be reckoned with', () => {
    const rule = { id: 'rule', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: -3 } } as const;
    const limit = {
      id: 'limit',
      kind: 'measured',
      measure: 'pieces',
      comparison: 'at-most',
      limit: Number.NaN,
      consequence: COSTS,
    } as const;
    expect(
      ofChallenge({
        heightCounts: [],
        measuringErrorMm: -1,
        points: [
          { ...ROW, id: 'a', per: 0 },
          { ...ROW, id: 'b', per: 1e-7 },
          { ...ROW, id: 'c', points: Number.POSITIVE_INFINITY },
          { ...ROW, id: 'd', capPoints: 3, floorPoints: 5 },
          { ...ROW, id: 'e', capPoints: 5, floorPoints: 5 },
          { ...ROW, id: 'f', capPoints: Number.NaN, floorPoints: Number.NaN },
        ],
        requirements: [rule, limit],
        ranking: { first: { ...HEIGHT, roundTo: -1 }, tieBreaks: [] },
      }),
    ).toEqual([
      ['height-source-missing', 'heightCounts'],
      ['number-out-of-range', 'measuringErrorMm'],
      ['number-out-of-range', 'points.0.per'],
      ['number-out-of-range', 'points.1.per'],
      ['number-out-of-range', 'points.2.points'],
      ['cap-below-floor', 'points.3.capPoints'],
      ['number-out-of-range', 'points.5.capPoints'],
      ['number-out-of-range', 'points.5.floorPoints'],
      ['number-out-of-range', 'requirements.0.consequence.points'],
      ['number-out-of-range', 'requirements.1.limit'],
      ['number-out-of-range', 'ranking.first.roundTo'],
    ]);
  });
});

describe('an attempt', () => {
  const judging = challenge({
    criteria: [{ id: 'idea', name: 'Idea' }],
    requirements: [
      { id: 'no-tape', kind: 'judged', text: 'No tape', consequence: COSTS },
      { id: 'few', kind: 'measured', measure: 'pieces', comparison: 'at-most', limit: 7, consequence: COSTS },
    ],
  });

  it('is marked on criteria that there are, from 0 to 4, once by each judge', () => {
    const marks = [
      { judge: 'Ada', criterion: 'idea', mark: 0 },
      { judge: 'Ben', criterion: 'idea', mark: 4 },
      { judge: 'Ada', criterion: 'craft', mark: 3 },
      { judge: 'Ada', criterion: 'idea', mark: 4.5 },
    ];
    expect(ofAttempt({ judged: marks }, judging)).toEqual([
      ['criterion-unknown', 'judged.2.criterion'],
      ['mark-twice', 'judged.3'],
      ['number-out-of-range', 'judged.3.mark'],
    ]);
  });

  it('tells the range with the number', () => {
    const [issue] = attemptIssues(attempt({ judged: [{ judge: 'Ada', criterion: 'idea', mark: -1 }] }), judging, [
      'here',
    ]);
    expect(issue).toEqual({
      code: 'number-out-of-range',
      path: ['here', 'judged', 0, 'mark'],
      details: { value: -1, least: 0, most: 4 },
    });
  });

  it('has pieces of kinds that there are, whatever became of the build', () => {
    expect(ofAttempt({ layout: laid('slab', 'cone') })).toEqual([['kind-unknown', 'layout.pieces.1.kind']]);
    const state = { kind: 'absent' } as const;
    expect(ofAttempt({ state, layout: numbersOnly('cone') })).toEqual([['kind-unknown', 'layout.pieces.0']]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308, -1e308])('is not reckoned with %s', (n) => {
    const by = { by: 'teacher', reason: 'seen', at: '2026-03-05T10:50:00+01:00' };
    expect(
      ofAttempt({
        observed: { heightReadingsMm: [n], photoHeightMm: n },
        decisions: [{ ...by, measure: 'volume', value: n }],
        adjustments: [{ ...by, points: n }],
      }),
    ).toEqual(
      ['observed.heightReadingsMm.0', 'observed.photoHeightMm', 'decisions.0.value', 'adjustments.0.points'].map(
        (path) => ['number-out-of-range', path],
      ),
    );
  });

  it('answers rules that a person judges', () => {
    expect(
      ofAttempt({ answers: { 'no-tape': { kept: false }, few: { kept: true }, other: { kept: true } } }, judging),
    ).toEqual([
      ['requirement-unknown', 'answers.few'],
      ['requirement-unknown', 'answers.other'],
    ]);
  });

  it('has readings, decisions and points by hand that are numbers', () => {
    const by = { by: 'teacher', reason: 'seen', at: '2026-03-05T10:50:00+01:00' };
    expect(
      ofAttempt({
        observed: { heightReadingsMm: [412, -1, Number.NaN], photoHeightMm: Number.POSITIVE_INFINITY },
        decisions: [
          { ...by, measure: 'height', value: -7 },
          { ...by, measure: 'weight' as MeasureId, value: 3 },
        ],
        adjustments: [
          { ...by, points: -3 },
          { ...by, points: Number.NaN },
        ],
      }),
    ).toEqual([
      ['number-out-of-range', 'observed.heightReadingsMm.1'],
      ['number-out-of-range', 'observed.heightReadingsMm.2'],
      ['number-out-of-range', 'observed.photoHeightMm'],
      ['number-out-of-range', 'decisions.0.value'],
      ['measure-unknown', 'decisions.1.measure'],
      ['number-out-of-range', 'adjustments.1.points'],
    ]);
  });
});

describe('a decision', () => {
  it('is of a moment: which of several is the latest follows from it', () => {
    const decided = { measure: 'height', value: 412, by: 'teacher', reason: 'read again', at: '5 March' };
    expect(told(attemptIssues(attempt({ decisions: [decided] }), challenge(), []))).toEqual([
      ['not-a-time', 'decisions.0.at'],
    ]);
  });
});

describe('a class', () => {
  it('is in order when everything is found', () => {
    const measured = { slab: { length: 61, width: 40, height: 30 } };
    expect(classIssues(classOf({ groups: [group('terns', measured)], attempts: [attempt()] }))).toEqual([]);
  });

  it('knows the group and the challenge of every attempt', () => {
    const attempts = [attempt({ id: 'a', group: 'gulls' }), attempt({ id: 'b', challenge: 'low', at: 'never' })];
    expect(told(classIssues(classOf({ attempts })))).toEqual([
      ['group-unknown', 'attempts.0.group'],
      ['challenge-unknown', 'attempts.1.challenge'],
    ]);
  });

  it('has every id once, tells of sizes of no kind, and looks into challenges and attempts', () => {
    const record = classOf({
      groups: [group('terns', { cone: { radius: 30, height: 70 } }), group('terns')],
      challenges: [challenge(), challenge({ heightCounts: [] })],
      attempts: [attempt({ at: 'never' }), attempt({ layout: numbersOnly() })],
    });
    expect(told(classIssues(record))).toEqual([
      ['id-twice', 'groups.1.id'],
      ['id-twice', 'challenges.1.id'],
      ['id-twice', 'attempts.1.id'],
      ['height-source-missing', 'challenges.1.heightCounts'],
      ['kind-unknown', 'groups.0.measured.cone'],
      ['not-a-time', 'attempts.0.at'],
    ]);
  });

  it('has groups whose own sizes make the solid of every kit that has the kind', () => {
    const box = KIT.kinds.map((kind) =>
      kind.id === 'cube' ? { ...kind, solid: { solid: 'sphere' as const, sizes: { radius: 35 } } } : kind,
    );
    const record = classOf({
      groups: [
        group('terns', { cube: { edge: 49 } }),
        group('puffins', { slab: { length: 60, width: 40, height: 0 } }),
      ],
      challenges: [challenge(), challenge({ id: 'low', kit: { ...KIT, kinds: box } })],
    });
    expect(told(classIssues(record))).toEqual([
      ['size-missing', 'groups.0.measured.cube.radius'],
      ['size-unknown', 'groups.0.measured.cube.edge'],
      ['size-not-positive', 'groups.1.measured.slab.height'],
    ]);
  });

  it('adds up its day with weights of challenges that there are', () => {
    const day = classOf({}).day;
    const record = classOf({ day: { ...day, placePoints: [7, Number.NaN], weights: { tall: -1, low: 2 } } });
    expect(told(classIssues(record))).toEqual([
      ['number-out-of-range', 'day.placePoints.1'],
      ['number-out-of-range', 'day.weights.tall'],
      ['challenge-unknown', 'day.weights.low'],
    ]);
  });
});
