import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { piecesUsed } from '@cairnmark/engine';
import { encode, faultsOf } from '@cairnmark/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addGroups, mergeGroups, removeGroup, renameGroup, withoutResults } from './group-changes.ts';
import { againstJoining } from './joining.ts';
import { measureKind } from './kit-changes.ts';

const demo = demoClass();
const triesOf = ({ attempts }: ClassRecord, group: string) => attempts.filter((one) => one.group === group);

describe('the groups of a class', () => {
  it('a late group comes last, with an id of its own', () => {
    const { groups } = addGroups(['Skuas', 'Terns'])(demo);
    expect(groups.slice(-2).map(({ id, name }) => [id, name])).toEqual([
      ['skuas', 'Skuas'],
      ['terns-2', 'Terns'],
    ]);
  });

  it('a new name changes nothing else', () => {
    const renamed = renameGroup('terns', 'Arctic Terns')(demo);
    expect({ ...renamed, groups: [] }).toEqual({ ...demo, groups: [] });
    expect(renamed.groups.find(({ id }) => id === 'terns')?.name).toBe('Arctic Terns');
  });

  it('two that become one have the tries of both, and lose none', () => {
    const merged = mergeGroups('petrels', 'terns')(demo);
    expect(merged.attempts).toHaveLength(demo.attempts.length);
    expect(triesOf(merged, 'terns')).toHaveLength(triesOf(demo, 'terns').length + triesOf(demo, 'petrels').length);
    expect(faultsOf('class', merged)).toEqual([]);
  });

  it('of two chosen tries that of the group that stays counts', () => {
    const [one, two] = [triesOf(demo, 'petrels')[0], triesOf(demo, 'terns')[0]].map((attempt) => ({
      ...attempt!,
      challenge: 'tall-light',
      chosen: true,
    }));
    const merged = mergeGroups('petrels', 'terns')({ ...demo, attempts: [one!, two!] });
    expect(merged.attempts.map(({ chosen }) => chosen)).toEqual([false, true]);
  });

  it('do not become one where tries would be worked out with sizes of other pieces', () => {
    const [kind] = usedBy('petrels');
    const sizes = demo.challenges[0]?.kit.kinds.find(({ id }) => id === kind)?.solid.sizes ?? {};
    const record = measureKind('petrels', kind ?? '', sizes)(demo);
    expect(againstJoining(record, 'petrels', 'terns')).toBe('sizes');
    expect(mergeGroups('petrels', 'terns')(record)).toBe(record);
    const alike = measureKind('terns', kind ?? '', sizes)(record);
    expect(againstJoining(alike, 'petrels', 'terns')).toBeNull();
    // Nobody has built with it: no result hangs on its sizes.
    const idle = demo.challenges[0]?.kit.kinds.find(({ id }) => !usedBy('petrels').includes(id));
    expect(againstJoining(measureKind('petrels', idle?.id ?? '', sizes)(demo), 'petrels', 'terns')).toBeNull();
  });

  it('do not become one where a build of one would have what the other earned', () => {
    const stroke = { id: 's', group: 'terns', what: { kind: 'earned', piece: 'cube', count: 1 } } as const;
    const record = { ...demo, supplies: { 'tall-light': [stroke] } };
    const builds = triesOf(demo, 'petrels').map(({ challenge }) => challenge);
    expect(builds).toContain('tall-light');
    expect(againstJoining(record, 'petrels', 'terns')).toBe('supply');
    const taken = { ...demo, supplies: { 'tall-light': [{ ...stroke, takenBack: true }] } };
    expect(againstJoining(taken, 'petrels', 'terns')).toBeNull();
  });

  it('a class without results keeps groups, challenges and the day', () => {
    const again = withoutResults(demo, 'Skerry Light again');
    expect(again).toEqual({ ...demo, name: 'Skerry Light again', attempts: [], supplies: {} });
  });

  it('whatever is done to them, the class can be kept', () => {
    const name = fc.string({ minLength: 1, maxLength: 12 }).map((text) => text.replace(/\p{Cc}/gu, '-'));
    const pick = fc.nat({ max: 20 });
    const step = fc.oneof(
      name.map((text) => () => addGroups([text])),
      fc.tuple(pick, name).map(
        ([k, text]) =>
          (record: ClassRecord) =>
            renameGroup(idAt(record, k), text),
      ),
      fc.tuple(pick, pick).map(
        ([k, l]) =>
          (record: ClassRecord) =>
            mergeGroups(idAt(record, k), idAt(record, l)),
      ),
      pick.map((k) => (record: ClassRecord) => removeGroup(idAt(record, k))),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 7 }), (steps) => {
        const last = steps.reduce((record, change) => change(record)(record), demo);
        expect(() => encode('class', last)).not.toThrow();
      }),
      { numRuns: 30 },
    );
  });
});

const usedBy = (group: string): readonly string[] => triesOf(demo, group).flatMap(({ layout }) => piecesUsed(layout));
const idAt = ({ groups }: ClassRecord, k: number): string => groups[k % Math.max(groups.length, 1)]?.id ?? '';
