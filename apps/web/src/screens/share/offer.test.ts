// What is said of a try before it comes in.

import { demoClass } from '@cairnmark/demo';
import type { Attempt, Challenge, ClassRecord } from '@cairnmark/engine';
import { printsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { offerOf as offerTo } from './offer.ts';
import type { Offered } from './read-offered.ts';

const demo = demoClass();
const [first] = demo.attempts as [Attempt];
const [tallLight] = demo.challenges as [Challenge];
const [puffins] = demo.groups;
const prints = printsOf(tallLight, puffins);

const offerOf = (record: ClassRecord, offered: Offered, groupId: string | null) =>
  offerTo(record, offered, groupId, 'teacher');

const otherwise = (change: Partial<Challenge>): ClassRecord => ({
  ...demo,
  challenges: demo.challenges.map((one) => (one === tallLight ? { ...one, ...change } : one)),
});

describe('an offer', () => {
  it('of a try that is here says which it is', () => {
    const offer = offerOf(demo, { attempt: first, prints }, null);
    expect(offer).toMatchObject({ group: { name: 'Puffins' }, held: { kind: 'same' }, number: 1, warnings: [] });
  });

  it('counts a new try by its time, between those that are here', () => {
    const between = { ...first, id: 'new', at: '2026-10-08T09:30:00+01:00' };
    expect(offerOf(demo, { attempt: between, prints }, null).number).toBe(2);
  });

  it('of a group that is unknown here waits for a group', () => {
    const strange = { ...first, group: 'gulls' };
    expect(offerOf(demo, { attempt: strange, prints }, null).group).toBeNull();
    const chosen = offerOf(demo, { attempt: strange, prints }, 'puffins');
    expect(chosen).toMatchObject({ group: { name: 'Puffins' }, held: { kind: 'same' } });
  });

  it('of a challenge that is unknown here has none', () => {
    expect(offerOf(demo, { attempt: { ...first, challenge: 'tall-tree' }, prints }, null).challenge).toBeNull();
  });

  it('from a file tells that the rules are not known', () => {
    expect(offerOf(demo, { attempt: first, prints: null }, null).warnings).toEqual(['rules-not-told']);
  });

  it('warns of other rules, another kit and other sizes, and of nothing that is only shown', () => {
    const warnings = (record: ClassRecord) => offerOf(record, { attempt: first, prints }, null).warnings;
    const [kind, ...kinds] = tallLight.kit.kinds;
    expect(warnings(otherwise({ measuringErrorMm: 5 }))).toEqual(['other-rules']);
    expect(warnings(otherwise({ kit: { ...tallLight.kit, kinds } }))).toEqual(['other-kit']);
    const measured = { cube: { edge: 61 } };
    expect(warnings({ ...demo, groups: demo.groups.map((one) => ({ ...one, measured })) })).toEqual(['other-sizes']);
    const renamed = { ...tallLight.kit, name: 'Another', kinds: [{ ...kind!, name: 'Another' }, ...kinds] };
    const crushed = { ...tallLight.kit, kinds: [{ ...kind!, crushed: 1 }, ...kinds] };
    expect(warnings(otherwise({ kit: crushed })), 'a piece crushed since changes no result').toEqual([]);
    expect(warnings(otherwise({ name: 'Another', labels: ['x'], hidden: ['volume'], kit: renamed }))).toEqual([]);
  });

  it('tells that what was earned stays on each device, where pieces are earned', () => {
    const supply = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
    const game = otherwise({ supply });
    const told = { attempt: first, prints: printsOf({ ...tallLight, supply }, puffins) };
    expect(offerOf(game, told, null).warnings).toEqual(['supply-here']);
    expect(offerOf(game, { ...told, prints: null }, null).warnings).toEqual(['rules-not-told', 'supply-here']);
  });
});

describe('what people said of a try', () => {
  const by = { by: 'teacher', reason: 'seen', at: first.at };
  const said: Attempt = {
    ...first,
    id: 'said',
    at: '2026-10-08T11:00:00+01:00',
    confirmedBy: 'teacher',
    judged: [{ judge: 'Ana', criterion: 'idea', mark: 4 }],
    answers: { 'no-tape': { kept: true } },
    decisions: [{ measure: 'height', value: 2000, ...by }],
    adjustments: [{ points: 50, ...by }],
    chosen: true,
  };
  const offered = { attempt: said, prints };

  it('comes in, and is told, by the hands of a teacher', () => {
    const offer = offerTo(demo, offered, null, 'teacher');
    expect(offer).toMatchObject({ attempt: said, comes: ['confirm', 'judge', 'decide'], staysOut: [] });
  });

  it('stays out by the hands of pupils, who could not say it here: the try waits to be seen', () => {
    const offer = offerTo(demo, offered, null, 'pupil');
    expect(offer).toMatchObject({ comes: [], staysOut: ['confirm', 'judge', 'decide'] });
    const open = { confirmedBy: null, judged: [], answers: {}, decisions: [], adjustments: [], chosen: false };
    expect(offer.attempt).toEqual({ ...said, ...open });
    const after = { ...demo, attempts: [...demo.attempts, offer.attempt] };
    expect(offerTo(after, offered, null, 'pupil').held.kind, 'once it is in').toBe('same');
  });

  it('by the hands of a measurer is what was seen, by those of a judge what was judged', () => {
    expect(offerTo(demo, offered, null, 'measurer')).toMatchObject({
      comes: ['confirm'],
      staysOut: ['judge', 'decide'],
    });
    expect(offerTo(demo, offered, null, 'judge')).toMatchObject({ comes: ['judge'], staysOut: ['confirm', 'decide'] });
  });

  it('is here already when the whole try is, whoever brings it in', () => {
    const after = { ...demo, attempts: [...demo.attempts, said] };
    expect(offerTo(after, offered, null, 'pupil').held).toEqual({ kind: 'same', attempt: said });
  });
});
