// Strokes on supply lists: examples, and laws for whatever is tapped in whatever order.

import type { ClassRecord } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { stockLeft, supplies, supplyIssues } from '@cairnmark/scoring';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, group } from '../../../../tests/reference/small-class.ts';
import { share } from '../../../../tests/tools/share.ts';
import type { Change } from './class-changes.ts';
import type { AtList, What } from './supply-changes.ts';
import { eventsOf, lastRound, whyNotBack, withGame, withOneLess, withoutStroke, withStroke } from './supply-changes.ts';

const RULE = { ends: { kind: 'turns', turns: 9 }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
/** Three slabs and two cubes, for two groups. */
const PLAYED = challenge({ supply: RULE });
const STOCK = { slab: 3, cube: 2 };
const EMPTY: ClassRecord = {
  ...classOf({ challenges: [PLAYED], attempts: [] }),
  groups: [group('terns'), group('puffins')],
};

const at = (changes: Partial<AtList> = {}): AtList => ({
  challenge: 'tall',
  group: 'terns',
  round: 1,
  carrier: null,
  ...changes,
});
const earned = (piece: string, count = 1): What => ({ kind: 'earned', piece, count });
const lost = (piece: string): What => ({ kind: 'lost', piece, count: 1, reason: 'crushed' });
const returned = (piece: string): What => ({ kind: 'returned', piece, count: 1 });
const isEarned =
  (piece: string) =>
  (what: What): boolean =>
    what.kind === 'earned' && what.piece === piece;

const made = (...changes: readonly Change[]): ClassRecord => changes.reduce((record, change) => change(record), EMPTY);
const list = (record: ClassRecord) => eventsOf(record, 'tall');
const has = (record: ClassRecord, of = 'terns') =>
  supplies(list(record), STOCK).find((one) => one.group === of)?.pieces ?? {};

describe('a stroke', () => {
  it('carries its group, its round and who carried, and has an id of its own', () => {
    const record = made(withStroke(at({ round: 2, carrier: '3' }), earned('cube')), withStroke(at(), earned('slab')));
    expect(list(record)).toEqual([
      { id: 'terns-1', group: 'terns', what: earned('cube'), round: 2, carrier: '3' },
      { id: 'terns-2', group: 'terns', what: earned('slab'), round: 1 },
    ]);
  });

  it('is not made when the class has no such piece left, or the group has none to lose or return', () => {
    const two = made(withStroke(at(), earned('cube')), withStroke(at({ group: 'puffins' }), earned('cube')));
    expect(withStroke(at(), earned('cube'))(two)).toBe(two);
    expect(withStroke(at(), lost('slab'))(two)).toBe(two);
    expect(withStroke(at(), returned('slab'))(two)).toBe(two);
  });

  it('is not made where there is no supply game or no such challenge', () => {
    const without = { ...EMPTY, challenges: [challenge()] };
    expect(withStroke(at(), earned('cube'))(without)).toBe(without);
    expect(withStroke(at({ challenge: 'wide' }), earned('cube'))(EMPTY)).toBe(EMPTY);
  });

  it('taken back stays in the list and counts no more', () => {
    const record = made(withStroke(at(), earned('cube')), withoutStroke('tall', 'terns-1'));
    expect(list(record)).toMatchObject([{ id: 'terns-1', takenBack: true }]);
    expect(has(record)).toEqual({});
  });

  it('cannot be taken back while later ones hang on it, and it is told which', () => {
    const gone = made(withStroke(at(), earned('cube')), withStroke(at(), lost('cube')));
    expect(withoutStroke('tall', 'terns-1')(gone)).toBe(gone);
    expect(whyNotBack(list(gone), 'terns-1', PLAYED)).toMatchObject({ code: 'more-than-the-group-has' });
    expect(whyNotBack(list(gone), 'terns-2', PLAYED)).toBeNull();
    const passedOn = made(
      withStroke(at(), earned('cube', 2)),
      withStroke(at(), returned('cube')),
      withStroke(at({ group: 'puffins' }), earned('cube')),
    );
    expect(withoutStroke('tall', 'terns-2')(passedOn)).toBe(passedOn);
    expect(whyNotBack(list(passedOn), 'terns-2', PLAYED)).toMatchObject({ code: 'stock-exceeded' });
  });
});

describe('one less', () => {
  const marked = (record: ClassRecord): readonly string[] =>
    list(record)
      .filter(({ takenBack }) => takenBack === true)
      .map(({ id }) => id);

  it('takes back the last stroke of the kind, of the round at work first', () => {
    const record = made(
      withStroke(at({ round: 1 }), earned('slab')),
      withStroke(at({ round: 2 }), earned('slab')),
      withStroke(at({ round: 2 }), earned('cube')),
      withStroke(at({ round: 1, group: 'puffins' }), earned('slab')),
    );
    expect(marked(withOneLess(at({ round: 1 }), isEarned('slab'))(record))).toEqual(['terns-1']);
    expect(marked(withOneLess(at({ round: 2 }), isEarned('slab'))(record))).toEqual(['terns-2']);
    expect(marked(withOneLess(at({ round: 3 }), isEarned('slab'))(record))).toEqual(['terns-2']);
  });

  it('passes over a stroke on whose piece a later one hangs', () => {
    const record = made(
      withStroke(at({ round: 2 }), earned('slab')),
      withStroke(at({ round: 2 }), lost('slab')),
      withStroke(at({ round: 1 }), earned('slab')),
    );
    expect(marked(withOneLess(at({ round: 2 }), isEarned('slab'))(record))).toEqual(['terns-3']);
  });

  it('never goes below nothing', () => {
    const none = made(withStroke(at(), earned('slab')), withStroke(at(), lost('slab')));
    expect(withOneLess(at(), isEarned('slab'))(none)).toBe(none);
    expect(withOneLess(at(), isEarned('cube'))(EMPTY)).toBe(EMPTY);
  });

  it('leaves the rest of a stroke of several pieces where it stood', () => {
    const record = made(
      withStroke(at({ round: 4, carrier: '2' }), earned('slab', 3)),
      withStroke(at(), lost('slab')),
      withOneLess(at(), isEarned('slab')),
    );
    expect(list(record).slice(0, 2)).toEqual([
      { id: 'terns-1', group: 'terns', what: earned('slab', 3), round: 4, carrier: '2', takenBack: true },
      { id: 'terns-3', group: 'terns', what: earned('slab', 2), round: 4, carrier: '2' },
    ]);
    expect(has(record)).toMatchObject({ slab: 1 });
  });
});

describe('the game of a challenge', () => {
  const without: ClassRecord = { ...EMPTY, challenges: [challenge()] };

  it('is set and ended while nobody has built and no stroke is made', () => {
    const set = withGame('tall', RULE)(without);
    expect(set.challenges[0]?.supply).toEqual(RULE);
    expect(withGame('tall', null)(set)).toEqual(without);
  });

  it('stays where groups have built, and where strokes are made', () => {
    const built = { ...without, attempts: [attempt()] };
    expect(withGame('tall', RULE)(built)).toBe(built);
    const stroked = made(withStroke(at(), earned('cube')), withoutStroke('tall', 'terns-1'));
    expect(withGame('tall', null)(stroked)).toBe(stroked);
  });
});

it('the last round is that of the strokes, and the first where none is told', () => {
  expect(lastRound([])).toBe(1);
  expect(lastRound(list(made(withStroke(at({ round: 3 }), earned('cube')), withStroke(at(), earned('slab')))))).toBe(3);
});

describe('laws, whatever is tapped', () => {
  const place = fc.record({
    challenge: fc.constant('tall'),
    group: fc.constantFrom('terns', 'puffins'),
    round: fc.integer({ min: 1, max: 3 }),
    carrier: fc.constantFrom(null, '1', 'runner'),
  });
  const piece = fc.constantFrom('slab', 'cube');
  const count = fc.constantFrom(1, 1, 1, 2);
  const what: fc.Arbitrary<What> = fc.oneof(
    fc.record({ kind: fc.constant('earned' as const), piece, count }),
    fc.record({ kind: fc.constant('earned' as const), piece, count }),
    fc.record({ kind: fc.constant('returned' as const), piece, count }),
    fc.record({ kind: fc.constant('lost' as const), piece, count, reason: fc.constant('crushed') }),
    fc.record({ kind: fc.constant('dropped' as const), piece, count }),
    fc.record({ kind: fc.constant('penalty' as const), points: fc.constantFrom(1, 2), reason: fc.constant('ran') }),
  );
  const tap: fc.Arbitrary<Change> = fc.oneof(
    { weight: 3, arbitrary: fc.tuple(place, what).map(([where, stroke]) => withStroke(where, stroke)) },
    fc.tuple(place, piece).map(([where, of]) => withOneLess(where, isEarned(of))),
    fc.tuple(place, what).map(([where, { kind }]) => withOneLess(where, (one) => one.kind === kind)),
    fc
      .tuple(fc.constantFrom('terns', 'puffins'), fc.integer({ min: 1, max: 12 }))
      .map(([of, number]) => withoutStroke('tall', `${of}-${number}`)),
  );
  const taps = fc.array(tap, { maxLength: 30 });
  const numRuns = share(3000, 300);

  it('pieces of the groups, lost ones and those left are the stock, and none is below nothing (seed 5201)', () => {
    let strokes = 0;
    fc.assert(
      fc.property(taps, (changes) => {
        const events = list(made(...changes));
        strokes += events.length;
        expect(supplyIssues(events, STOCK)).toEqual([]);
        const left = stockLeft(events, STOCK);
        for (const [kind, stock] of Object.entries(STOCK)) {
          const held = supplies(events, STOCK).map(({ pieces }) => pieces[kind] ?? 0);
          const gone = events.reduce((sum, { what: of, takenBack }) => {
            return takenBack !== true && of.kind === 'lost' && of.piece === kind ? sum + of.count : sum;
          }, 0);
          expect(held.reduce((sum, one) => sum + one, 0) + gone + (left[kind] ?? 0)).toBe(stock);
          expect(Math.min(...held, left[kind] ?? 0)).toBeGreaterThanOrEqual(0);
        }
      }),
      { seed: 5201, numRuns },
    );
    expect(strokes).toBeGreaterThan(numRuns);
  });

  it('no stroke is ever deleted or changed but for being taken back, and the class can be kept (seed 5202)', () => {
    fc.assert(
      fc.property(taps, (changes) => {
        let record = EMPTY;
        for (const change of changes) {
          const before = list(record);
          record = change(record);
          const now = new Map(list(record).map((event) => [event.id, event]));
          expect(now.size).toBe(list(record).length);
          for (const event of before) expect([event, { ...event, takenBack: true }]).toContainEqual(now.get(event.id));
        }
        expect(faultsOf('class', record)).toEqual([]);
      }),
      { seed: 5202, numRuns: share(1000, 100) },
    );
  });

  it('one more and one less leave every count as it was (seed 5203)', () => {
    fc.assert(
      fc.property(taps, place, piece, (changes, where, of) => {
        const before = made(...changes);
        const more = withStroke(where, earned(of))(before);
        fc.pre(more !== before);
        const again = withOneLess(where, isEarned(of))(more);
        expect(again).not.toBe(more);
        expect(has(again, where.group)[of] ?? 0).toBe(has(before, where.group)[of] ?? 0);
        expect(stockLeft(list(again), STOCK)).toEqual(stockLeft(list(before), STOCK));
      }),
      { seed: 5203, numRuns },
    );
  });
});
