// A class of four groups and two challenges, worked out by hand.

import { describe, expect, it } from 'vitest';
import {
  attempt,
  challenge,
  classOf,
  group,
  KIT,
  laid,
  numbersOnly,
  STATICS,
} from '../../../../tests/reference/small-class.ts';
import type { Attempt, ClassRecord } from '../types.ts';
import type { ClassScore } from './score-class.ts';
import { scoreClass } from './score-class.ts';

const LOW = challenge({
  id: 'low',
  points: [{ id: 'pieces', measure: 'pieces', points: 5, per: 1, rounding: 'none' }],
  ranking: { first: { by: 'pieces', better: 'more', roundTo: 0 }, tieBreaks: [] },
});

function tall(id: string, by: string, heightMm: number, changes: Partial<Attempt> = {}): Attempt {
  return attempt({
    id,
    group: by,
    layout: numbersOnly('slab'),
    observed: { heightReadingsMm: [heightMm] },
    ...changes,
  });
}

const low = (id: string, by: string, ...pieces: string[]): Attempt =>
  attempt({ id, group: by, challenge: 'low', layout: numbersOnly(...pieces) });

const CLASS = classOf({
  groups: [group('terns'), group('puffins'), group('eiders'), group('fulmars')],
  challenges: [challenge(), LOW],
  attempts: [
    tall('a1', 'terns', 350),
    tall('a2', 'terns', 419, { at: '2026-03-05T11:00:00+01:00' }),
    tall('a3', 'puffins', 428),
    tall('a4', 'eiders', 390, { state: { kind: 'absent' } }),
    low('b1', 'terns', 'slab', 'cube', 'cube'),
    low('b2', 'puffins', 'slab', 'cube'),
    low('b3', 'eiders', 'slab', 'cube'),
  ],
});

function scored(record: ClassRecord): ClassScore {
  const result = scoreClass(record, STATICS);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

describe('a class', () => {
  it('has a report for every attempt, by challenge', () => {
    const { reports } = scored(CLASS);
    expect([...reports].map(([id, all]) => [id, all.map((one) => [one.attempt, one.total])])).toEqual([
      [
        'tall',
        [
          ['a1', 70],
          ['a2', 82],
          ['a3', 84],
          ['a4', null],
        ],
      ],
      [
        'low',
        [
          ['b1', 15],
          ['b2', 10],
          ['b3', 10],
        ],
      ],
    ]);
  });

  it('has a board for every challenge, with every group', () => {
    const { standings } = scored(CLASS);
    expect([...standings].map(([id, all]) => [id, all.map((one) => [one.group, one.place, one.out[0]?.code])])).toEqual(
      [
        [
          'tall',
          [
            ['puffins', 1, undefined],
            ['terns', 2, undefined],
            ['eiders', null, 'absent'],
            ['fulmars', null, 'no-attempt'],
          ],
        ],
        [
          'low',
          [
            ['terns', 1, undefined],
            ['eiders', 2, undefined],
            ['puffins', 2, undefined],
            ['fulmars', null, 'no-attempt'],
          ],
        ],
      ],
    );
  });

  it('adds up the day from the attempts that count', () => {
    // Terns 82 + 15, puffins 84 + 10; eiders have one result of two, fulmars none.
    expect(scored(CLASS).day.map(({ group: id, place, total, present }) => [id, place, total, present])).toEqual([
      ['terns', 1, 97, 2],
      ['puffins', 2, 94, 2],
      ['eiders', null, null, 1],
      ['fulmars', null, null, 0],
    ]);
  });

  it('[D10] goes on with a challenge that nobody has tried yet, whichever attempt counts there', () => {
    const later = { ...CLASS, challenges: [...CLASS.challenges, challenge({ id: 'wall', attemptCounts: 'chosen' })] };
    expect(scored(later).day).toEqual(scored(CLASS).day);
    // An attempt that does not count is one: the challenge is being played.
    const begun = { ...later, attempts: [...later.attempts, attempt({ id: 'c1', challenge: 'wall' })] };
    expect(scored(begun).day.map(({ place, of }) => [place, of])).toEqual(Array(4).fill([null, 3]));
  });

  it('[D9] looks at the marks of attempts that count: a judge who marked a first try alone did not meet that group', () => {
    const judging = challenge({ criteria: [{ id: 'idea', name: 'Idea' }] });
    const marked = (id: string, by: string, heightMm: number, ...judges: string[]) =>
      tall(id, by, heightMm, { judged: judges.map((judge) => ({ judge, criterion: 'idea', mark: 3 })) });
    const warningsFor = (first: number, second: number) =>
      scored(
        classOf({
          challenges: [judging],
          attempts: [
            marked('t1', 'terns', first, 'Ada', 'Ben'),
            marked('t2', 'terns', second, 'Ada'),
            marked('p1', 'puffins', 428, 'Ada', 'Ben'),
          ],
        }),
      ).warnings.map(({ code }) => code);
    expect(warningsFor(350, 419)).toEqual(['judges-of-different-groups']);
    expect(warningsFor(419, 350)).toEqual([]);
  });

  it('[K9] [D5] leaving out a measurement does not beat measuring it: no place and no result without what may take points', () => {
    const rock = challenge({
      points: [
        { id: 'height', measure: 'height', points: 1, per: 10, rounding: 'down' },
        { id: 'base', measure: 'base-area', points: -1, per: 100, rounding: 'down' },
      ],
      fallen: { counts: 'points', points: 1 },
      ranking: { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] },
    });
    const of = (id: string, changes: Partial<Attempt> = {}) => attempt({ id, group: id, ...changes });
    const bare = { layout: numbersOnly('slab'), observed: { heightReadingsMm: [80] } };
    const decided = {
      measure: 'base-area',
      value: 3_000,
      by: 'Ada',
      reason: 'squared paper',
      at: '2026-03-05T10:30:00Z',
    };
    const record = classOf({
      groups: ['terns', 'puffins', 'eiders', 'fulmars'].map((id) => group(id)),
      challenges: [rock],
      attempts: [
        // A slab and a cube, 8 cm high, on 24 cm2; the same without a drawing; with a base of 30 cm2 that Ada decided.
        of('terns'),
        of('puffins', bare),
        of('fulmars', { ...bare, decisions: [decided] }),
        // What fell counts its one point, whatever was measured.
        of('eiders', { ...bare, state: { kind: 'fell', afterSeconds: 3 } }),
      ],
    });
    const { standings, reports, day } = scored(record);
    expect(standings.get('tall')?.map((one) => [one.group, one.place, one.decidedBy[0]?.value, one.out])).toEqual([
      ['eiders', 1, 1, []],
      ['terns', 2, 8 - 24, []],
      ['fulmars', 3, 8 - 30, []],
      ['puffins', null, null, [{ code: 'not-measured', measures: ['base-area'] }]],
    ]);
    const puffins = reports.get('tall')?.find((one) => one.group === 'puffins');
    expect([puffins?.total, puffins?.points.map(({ points }) => points)]).toEqual([null, [8, null]]);
    expect(day.find((one) => one.group === 'puffins')).toMatchObject({ place: null, total: null, present: 0, of: 1 });
    // Ranked by height it keeps its place; the day that adds up points still has no result of it.
    const byHeight = challenge({ ...rock, ranking: challenge().ranking });
    const high = scored({ ...record, challenges: [byHeight] });
    expect(high.standings.get('tall')?.find((one) => one.group === 'puffins')).toMatchObject({ place: 1, out: [] });
    expect(high.day.find((one) => one.group === 'puffins')).toMatchObject({ place: null, present: 0, of: 1 });
  });

  it('says which report of each group counts', () => {
    expect([...(scored(CLASS).counting.get('tall') ?? [])].map(([id, report]) => [id, report?.attempt])).toEqual([
      ['terns', 'a2'],
      ['puffins', 'a3'],
      ['eiders', 'a4'],
      ['fulmars', undefined],
    ]);
  });

  it('scores the same whatever the order of groups and attempts', () => {
    const other = { ...CLASS, groups: [...CLASS.groups].reverse(), attempts: [...CLASS.attempts].reverse() };
    expect(scored(other).standings).toEqual(scored(CLASS).standings);
    expect(scored(other).day).toEqual(scored(CLASS).day);
  });

  it('an empty class has empty boards', () => {
    const empty = scored(classOf({ groups: [], attempts: [] }));
    expect([[...empty.reports], [...empty.standings], empty.day]).toEqual([[['tall', []]], [['tall', []]], []]);
  });
});

describe('a class that does not hang together', () => {
  it('tells of names that point nowhere', () => {
    const result = scoreClass({ ...CLASS, attempts: [tall('a', 'gulls', 350)] }, STATICS);
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'group-unknown', path: ['attempts', 0, 'group'] }] });
  });

  it('tells of layouts and sizes, each fault once, at its place in the record', () => {
    const kinds = KIT.kinds.map((kind) =>
      kind.id === 'slab' ? { ...kind, solid: { ...kind.solid, sizes: { length: 60 } } } : kind,
    );
    const record = classOf({
      groups: [group('terns'), group('puffins', { cube: { edge: -7 } })],
      challenges: [challenge({ kit: { ...KIT, kinds } })],
      attempts: [
        attempt({ id: 'a', layout: laid('slab') }),
        attempt({ id: 'b', layout: laid('slab') }),
        attempt({ id: 'c', group: 'puffins', layout: laid('cube') }),
        attempt({ id: 'd', layout: laid('cube', 'ball') }),
      ],
    });
    const result = scoreClass(record, STATICS);
    expect(result.ok ? [] : result.issues.map(({ path }) => path.join('.'))).toEqual([
      'challenges.0.kit.kinds.0.solid.sizes.width',
      'challenges.0.kit.kinds.0.solid.sizes.height',
      'groups.1.measured.cube.edge',
      'attempts.3.layout.pieces.1.kind',
    ]);
  });
});
