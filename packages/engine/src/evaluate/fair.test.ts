// What makes a result one that can be defended: fallen builds, own results, supply, notes, kinds, what separates two
// builds. A cube of 50 on a slab of 60 x 40 x 30: 80 mm, 8 whole cm at 2 points.

import type { SupplyEvent } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import {
  attempt,
  challenge,
  classOf,
  group,
  KIT,
  laid,
  numbersOnly,
  reportOn,
  STATICS,
} from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { scoreClass } from '../class/score-class.ts';
import { READY_IDS } from '../ready/plans.ts';
import { readyChallenge } from '../ready/ready.ts';
import { standings } from '../standings/standings.ts';
import type { Attempt, Challenge } from '../types.ts';
import { changesSince } from '../why/changes.ts';
import { compareReports } from '../why/compare.ts';
import { evaluate } from './evaluate.ts';

const TERNS = [group('terns')];
const FELL = { state: { kind: 'fell', afterSeconds: 7 } } as const;
const BY_POINTS = { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] } as const;
const valueOf = (one: Attempt, id: string, at: Challenge = challenge(), events: readonly SupplyEvent[] = []) =>
  reportOn(one, at, group(one.group), events).facts.find((fact) => fact.id === id)?.value;

describe('a build that fell', () => {
  const on = (changes: Partial<Challenge>) => {
    const at = challenge(changes);
    const report = reportOn(attempt(FELL), at);
    return [report.total, standings([report], at, TERNS)[0]?.place ?? null];
  };
  it('[A11] [A12] counts nothing, stated points, or what was measured of it, as the challenge says', () => {
    expect(on({})).toEqual([null, null]);
    expect(on({ fallen: { counts: 'as-measured' } })).toEqual([16, 1]);
    expect(on({ fallen: { counts: 'points', points: 3 }, ranking: BY_POINTS })).toEqual([3, 1]);
    // Ranked by height, stated points place nobody: what was measured of it does not count.
    expect(on({ fallen: { counts: 'points', points: 3 } })).toEqual([3, null]);
  });
  it('[A2] which is out has no points, and keeps what was measured of it and the seconds it stood', () => {
    const report = reportOn(attempt(FELL));
    expect(report.total).toBeNull();
    expect(report.points.map(({ points }) => points)).toEqual([16]);
    expect(valueOf(attempt(FELL), 'stood-seconds')).toBe(7);
    expect(valueOf(attempt({ observed: { heightReadingsMm: [], stoodSeconds: 31 } }), 'stood-seconds')).toBe(31);
  });
});

describe('own results', () => {
  const own = { pi: 'key', closeShare: 0.05, rewards: [{ measure: 'volume', points: 7 }] } as const;
  it('[A10] earn the points stated for them when they agree, and nothing else', () => {
    const total = (value: number) => {
      const report = reportOn(attempt({ own: [{ measure: 'volume', value }] }), challenge({ own }));
      return [report.own[0]?.verdict, report.total];
    };
    expect(total(197_000)).toEqual(['agrees', 23]);
    expect(total(205_000)).toEqual(['close', 16]);
    expect(total(72_000)).toEqual(['check-the-working', 16]);
    expect(reportOn(attempt({ own: [{ measure: 'volume', value: 72_000 }] }), challenge({ own })).own[0]?.slip).toBe(
      'piece-forgotten',
    );
  });
  it('[A15] of a build without a drawing are held against what counts: the ruler, or a decision', () => {
    const rule = { ...own, rewards: [{ measure: 'height', points: 7 }] };
    const line = (value: number, changes: Partial<Attempt> = {}) => {
      const bare = { layout: numbersOnly('slab'), observed: { heightReadingsMm: [90] } };
      return reportOn(attempt({ ...bare, own: [{ measure: 'height', value }], ...changes }), challenge({ own: rule }));
    };
    expect(line(93).own[0]).toMatchObject({ expected: 90, source: 'observed', tolerance: 3, verdict: 'agrees' });
    // 9 whole cm at 2 points, and 7.
    expect([line(93).total, line(93.5).total]).toEqual([25, 18]);
    const decided = { measure: 'height', value: 80, by: 'Ada', reason: 'it leant', at: '2026-03-05T10:30:00Z' };
    expect(line(83, { decisions: [decided] }).own[0]).toMatchObject({ expected: 80, source: 'decided', points: 7 });
    // Of a drawn build it stays what the drawing gives: 80 mm.
    expect(line(80, { layout: laid('slab', 'cube') }).own[0]).toMatchObject({ source: 'predicted', points: 7 });
  });
});

describe('pieces', () => {
  const only = (kinds: readonly string[]) =>
    challenge({ requirements: [{ id: 'few', kind: 'only-kinds', kinds, consequence: { kind: 'must' } }] });
  it('[A5] a rule about pieces that are not listed puts the build out', () => {
    const report = reportOn(attempt({ layout: numbersOnly(), observed: { heightReadingsMm: [80] } }), only(['slab']));
    expect(standings([report], only(['slab']), TERNS)[0]?.out).toEqual([
      { code: 'not-measured', measures: ['pieces'] },
    ]);
    expect(reportOn(attempt(), only(['slab'])).requirements[0]?.breaches).toEqual([
      { kind: 'cube', used: 1, allowed: 0 },
    ]);
  });
  it('a rule on kinds that names none is refused', () => {
    const belonging = { challenge: only([]), group: group('terns'), events: [] };
    expect(evaluate(attempt(), belonging, STATICS)).toMatchObject({
      ok: false,
      issues: [{ code: 'kinds-missing', path: ['challenge', 'requirements', 0, 'kinds'] }],
    });
  });
  it('are counted in full sets', () => {
    expect(valueOf(attempt({ layout: laid('slab', 'cube', 'slab') }), 'full-sets')).toBe(1);
    expect(valueOf(attempt({ layout: laid('slab') }), 'full-sets')).toBe(0);
  });
});

describe('a supply game', () => {
  const supply = { ends: { kind: 'turns', turns: 9 }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
  const stroke = (id: string, what: SupplyEvent['what']): SupplyEvent => ({ id, group: 'terns', what });
  const EVENTS = [
    stroke('a', { kind: 'earned', piece: 'slab', count: 2 }),
    stroke('b', { kind: 'penalty', points: 3, reason: 'ran with scissors' }),
  ];
  const earned = challenge({
    supply,
    points: [
      { id: 'faces', measure: 'earned:faces', points: 1, per: 1, rounding: 'none' },
      { id: 'penalties', measure: 'earned:penalties', points: -1, per: 1, rounding: 'none' },
    ],
    requirements: [{ id: 'own-pieces', kind: 'only-earned', consequence: { kind: 'must' } }],
  });
  it('earns points, and limits what may be built', () => {
    const report = reportOn(attempt(), earned, group('terns'), EVENTS);
    // Two slabs of six faces, less 3.
    expect(report.total).toBe(9);
    expect(report.requirements[0]).toMatchObject({
      verdict: 'broken',
      breaches: [{ kind: 'cube', used: 1, allowed: 0 }],
    });
    expect(
      reportOn(attempt({ layout: laid('slab', 'slab') }), earned, group('terns'), EVENTS).requirements[0],
    ).toMatchObject({ verdict: 'kept' });
  });
  it('never hands out more than the class has', () => {
    const events = [...EVENTS, stroke('c', { kind: 'earned', piece: 'cube', count: 3 })];
    const scored = scoreClass(classOf({ challenges: [earned], supplies: { tall: events } }), STATICS);
    expect(scored).toMatchObject({ ok: false, issues: [{ code: 'stock-exceeded', path: ['supplies', 'tall', 2] }] });
  });
});

describe('what separates two builds', () => {
  it('is told measure by measure up to the one that decides, then part by part of the points', () => {
    const ranked = challenge({
      requirements: [{ id: 'tape', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 5 } }],
      ranking: {
        first: { by: 'pieces', better: 'less', roundTo: 1 },
        tieBreaks: [
          { by: 'height', better: 'more', roundTo: 1 },
          { by: 'volume', better: 'more', roundTo: 1 },
        ],
      },
    });
    const read = (heightMm: number, kept: boolean) =>
      reportOn(attempt({ observed: { heightReadingsMm: [heightMm] }, answers: { tape: { kept } } }), ranked);
    expect(compareReports(read(80, true), read(91, false), ranked)).toEqual([
      { kind: 'key', by: 'pieces', first: 2, second: 2, ahead: null, withinError: false },
      { kind: 'key', by: 'height', first: 80, second: 91, ahead: 'second', withinError: false },
      { kind: 'row', row: 'tall-row', measure: 'height', first: 16, second: 18 },
      { kind: 'requirement', requirement: 'tape', verdicts: ['kept', 'broken'], first: 0, second: -5 },
      { kind: 'total', first: 16, second: 13 },
    ]);
  });
  it('[A9] tells of points that are not known, and puts nobody ahead by them', () => {
    const at = challenge({
      points: [
        { id: 'high', measure: 'height', points: 1, per: 10, rounding: 'down' },
        { id: 'base', measure: 'base-area', points: -1, per: 100, rounding: 'down' },
      ],
      requirements: [
        {
          id: 'flat',
          kind: 'measured',
          measure: 'base-area',
          comparison: 'at-most',
          limit: 2_000,
          consequence: { kind: 'costs', points: 5 },
        },
      ],
    });
    const adjustments = [{ points: 2, by: 'Ada', reason: 'helped', at: '2026-03-05T10:30:00Z' }];
    const bare = reportOn(
      attempt({ layout: numbersOnly('slab'), observed: { heightReadingsMm: [90] }, adjustments }),
      at,
    );
    expect(compareReports(reportOn(attempt(), at), bare, at).slice(1)).toEqual([
      { kind: 'row', row: 'high', measure: 'height', first: 8, second: 9 },
      { kind: 'row', row: 'base', measure: 'base-area', first: -24, second: 'not-known' },
      {
        kind: 'requirement',
        requirement: 'flat',
        verdicts: ['broken', 'not-measured'],
        first: -5,
        second: 'not-known',
      },
      { kind: 'adjustments', first: 0, second: 2 },
      { kind: 'total', first: 8 - 24 - 5, second: 'not-known' },
    ]);
  });
  it('marks what the ruler cannot tell, and says what changed since the last try', () => {
    const [before, after] = [80, 82].map((heightMm) =>
      reportOn(attempt({ observed: { heightReadingsMm: [heightMm] } })),
    ) as [ReturnType<typeof reportOn>, ReturnType<typeof reportOn>];
    expect(compareReports(before, after, challenge())[0]).toMatchObject({ ahead: 'second', withinError: true });
    const [height, slenderness] = changesSince(before, after);
    expect(height).toEqual({ fact: 'height', before: 80, after: 82, error: Math.hypot(3, 3), withinError: true });
    expect(slenderness).toMatchObject({ fact: 'height-to-width', before: 2, after: 2.05, withinError: true });
  });
  it('lays no change to the ruler where both tries are measured with the same sizes of the kit', () => {
    const at = challenge({ heightCounts: ['model'], ruler: 'inch' });
    const [before, after] = [laid('slab', 'slab'), laid('slab', 'slab', 'slab')].map((layout) =>
      reportOn(attempt({ layout }), at),
    ) as [ReturnType<typeof reportOn>, ReturnType<typeof reportOn>];
    const height = changesSince(before, after).find(({ fact }) => fact === 'height');
    // One slab more: it errs by 25.4 / root 3 = 14.7 mm, and 30 is more; the root of the squares of 29.3 and 44 would hide it.
    expectNear((height?.after ?? 0) - (height?.before ?? 0), 30, { absolute: 1e-9 });
    expect([height?.withinError, (height?.error ?? 0) > 30]).toEqual([false, true]);
  });
  it('tells the same from either side when one of the two was not there, and what it no longer has', () => {
    const at = challenge({
      requirements: [{ id: 'tape', kind: 'judged', text: 'No tape', consequence: { kind: 'earns', points: 5 } }],
    });
    const stood = reportOn(attempt({ answers: { tape: { kept: true } } }), at);
    const absent = reportOn(attempt({ state: { kind: 'absent' } }), at);
    const points = (lines: ReturnType<typeof compareReports>) => lines.filter(({ kind }) => kind !== 'key');
    expect(points(compareReports(stood, absent, at))).toEqual([
      { kind: 'row', row: 'tall-row', measure: 'height', first: 16, second: null },
      { kind: 'requirement', requirement: 'tape', verdicts: ['kept', null], first: 5, second: null },
      { kind: 'total', first: 21, second: null },
    ]);
    expect(points(compareReports(absent, stood, at))).toEqual([
      { kind: 'row', row: 'tall-row', measure: 'height', first: null, second: 16 },
      { kind: 'requirement', requirement: 'tape', verdicts: [null, 'kept'], first: null, second: 5 },
      { kind: 'total', first: null, second: 21 },
    ]);
    const height = changesSince(stood, absent).find(({ fact }) => fact === 'height');
    expect(height).toMatchObject({ before: 80, after: null, withinError: false });
  });
  it('[A2] [A11] counts no part of a build that fell but what stands in its place, so that the parts make the total', () => {
    const at = challenge({ fallen: { counts: 'points', points: 3 }, ranking: BY_POINTS });
    const fallen = reportOn(attempt(FELL), at);
    expect(compareReports(fallen, reportOn(attempt(), at), at).slice(1)).toEqual([
      { kind: 'row', row: 'tall-row', measure: 'height', first: null, second: 16 },
      { kind: 'fallen', first: 3, second: 0 },
      { kind: 'total', first: 3, second: 16 },
    ]);
    expect(compareReports(reportOn(attempt(FELL)), reportOn(attempt()), challenge()).slice(1)).toEqual([
      { kind: 'row', row: 'tall-row', measure: 'height', first: null, second: 16 },
      { kind: 'total', first: null, second: 16 },
    ]);
  });
});

it('[K6] towers of the same kinds, read off the same kit, err alike: only their own part counts', () => {
  const at = challenge({ heightCounts: ['model'] });
  const reports = ['terns', 'puffins'].map((id, k) =>
    reportOn(attempt({ id, group: id, layout: k === 0 ? laid('slab', 'cube') : laid('cube', 'slab') }), at),
  );
  const [first, second] = reports.map(({ facts }) => facts.find(({ id }) => id === 'height'));
  expect(first?.errors).toEqual(second?.errors);
  const own = group('terns', { cube: { edge: 51 } });
  const read = reportOn(attempt(), at, own).facts.find(({ id }) => id === 'height');
  expect(Object.keys(read?.errors ?? {}).sort()).toEqual(['slab/height', 'terns:cube/edge']);
  // Twice 1 mm / root 12 for each size that was read.
  expectNear(read?.errors['slab/height'] ?? Number.NaN, 2 / Math.sqrt(12), { relative: 1e-6 });
});

describe('ready challenges', () => {
  it.each(READY_IDS)('%s makes sense with any kit', (id) => {
    const at = { ...readyChallenge(id, 'Ready', KIT, 2), id: 'tall' };
    const report = reportOn(attempt(), at);
    const [standing] = standings([report], at, TERNS);
    expect(standing?.out[0]?.code ?? 'placed').toBe(
      id === 'one-of-every-kind' || standing?.place === 1 ? 'placed' : 'rule-broken',
    );
    expect(at.labels.length).toBeGreaterThan(0);
  });
});
