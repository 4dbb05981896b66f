// What is said of a try before it comes in.

import { demoClass } from '@cairnmark/demo';
import type { Attempt, Challenge, ClassRecord } from '@cairnmark/engine';
import { printsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { offerOf } from './offer.ts';

const demo = demoClass();
const [first] = demo.attempts as [Attempt];
const [tallLight] = demo.challenges as [Challenge];
const [puffins] = demo.groups;
const prints = printsOf(tallLight, puffins);

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
});
