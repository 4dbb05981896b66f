// Laws of supplies, on lists of strokes that are right and wrong by turns.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { supplyIssues } from './issues.ts';
import { stockLeft } from './stock.ts';
import { supplies } from './supplies.ts';
import type { SupplyEvent } from './types.ts';

const runs = share(10_000, 500);
const STOCK = { cube: 7, drum: 5, cone: 3 };

const pieces = { piece: fc.constantFrom('cube', 'drum', 'cone'), count: fc.integer({ min: 1, max: 3 }) };
const what = fc.oneof<fc.Arbitrary<SupplyEvent['what']>[]>(
  fc.record({ kind: fc.constant('earned' as const), ...pieces }),
  fc.record({ kind: fc.constant('earned' as const), ...pieces }),
  fc.record({ kind: fc.constant('returned' as const), ...pieces }),
  fc.record({ kind: fc.constant('lost' as const), ...pieces, reason: fc.constant('crushed') }),
  fc.record({ kind: fc.constant('dropped' as const), ...pieces }),
  fc.record({
    kind: fc.constant('penalty' as const),
    points: fc.constantFrom(0.1, 0.2, 3),
    reason: fc.constant('talked'),
  }),
);
const stroke = fc.record({
  group: fc.constantFrom('terns', 'puffins', 'eiders'),
  what,
  round: fc.integer({ min: 1, max: 3 }),
  carrier: fc.constantFrom('Ada', 'Sol', 'Kim'),
  takenBack: fc.constantFrom(false, false, false, true),
});
const anyList = fc
  .array(stroke, { maxLength: 40 })
  .map((list) => list.map((one, k): SupplyEvent => ({ id: `e${k}`, ...one })));

/** Every stroke that went too far is taken back. */
function mended(list: readonly SupplyEvent[]): SupplyEvent[] {
  const wrong = new Set(supplyIssues(list, STOCK).map(({ event }) => event));
  return list.map((event, k) => (wrong.has(k) ? { ...event, takenBack: true } : event));
}
const goodList = anyList.map(mended);

describe('laws of supplies', () => {
  it('[S4] [S5] with every stroke that went too far taken back, nothing is left to tell (seed 4161)', () => {
    let told = 0;
    fc.assert(
      fc.property(anyList, (list) => {
        told += supplyIssues(list, STOCK).length;
        expect(supplyIssues(mended(list), STOCK)).toEqual([]);
      }),
      { seed: 4161, numRuns: runs },
    );
    expect(told).toBeGreaterThan(runs);
  });

  it('[S3] pieces of all groups, lost ones and those left are the stock, kind by kind (seed 4162)', () => {
    fc.assert(
      fc.property(goodList, (list) => {
        const all = supplies(list, STOCK);
        const left = stockLeft(list, STOCK);
        for (const [kind, stock] of Object.entries(STOCK)) {
          const held = all.map((one) => one.pieces[kind] ?? 0);
          const lost = list.map((one) => {
            return one.takenBack !== true && one.what.kind === 'lost' && one.what.piece === kind ? one.what.count : 0;
          });
          expect(sum(held) + sum(lost) + (left[kind] ?? 0)).toBe(stock);
          expect(Math.min(...held, left[kind] ?? 0)).toBeGreaterThanOrEqual(0);
        }
        expect(sum(all.map(({ lost }) => lost)) + sum(all.flatMap((one) => Object.values(one.pieces)))).toBe(
          sum(Object.values(STOCK)) - sum(Object.values(left)),
        );
      }),
      { seed: 4162, numRuns: runs },
    );
  });

  it('[S10] how the strokes of different groups follow each other changes no supply (seed 4163)', () => {
    const woven = goodList.chain((list) => {
      return fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }));
    });
    fc.assert(
      fc.property(woven, ([list, shuffled]) => {
        // The groups in the shuffled order, each with its own strokes in theirs.
        const queues = new Map<string, SupplyEvent[]>();
        for (const event of list) queues.set(event.group, [...(queues.get(event.group) ?? []), event]);
        const other = shuffled.flatMap(({ group }) => queues.get(group)?.shift() ?? []);
        expect(other).toHaveLength(list.length);
        expect(supplies(other, STOCK)).toEqual(supplies(list, STOCK));
      }),
      { seed: 4163, numRuns: runs },
    );
  });

  it('[S2] taking a stroke back is as if it had never been made (seed 4164)', () => {
    fc.assert(
      fc.property(anyList, fc.nat(), (list, pick) => {
        const chosen = list.length === 0 ? -1 : pick % list.length;
        const back = list.map((event, k) => (k === chosen ? { ...event, takenBack: true } : event));
        const never = list.filter((_, k) => k !== chosen);
        expect(supplies(back, STOCK)).toEqual(supplies(never, STOCK));
        expect(stockLeft(back, STOCK)).toEqual(stockLeft(never, STOCK));
        expect(named(back)).toEqual(named(never));
      }),
      { seed: 4164, numRuns: runs },
    );
  });
});

const sum = (counts: readonly number[]): number => counts.reduce((total, count) => total + count, 0);

/** The issues with the id of the stroke in place of where it stands. */
const named = (list: readonly SupplyEvent[]) =>
  supplyIssues(list, STOCK).map((issue) => ({ ...issue, event: list[issue.event]?.id }));
