import { describe, expect, it } from 'vitest';
import { SUPPLY_FACT_IDS, supplyFactValues } from './facts.ts';
import { supplyIssues } from './issues.ts';
import { isOver } from './over.ts';
import { stockLeft } from './stock.ts';
import { supplies } from './supplies.ts';
import type { Supply, SupplyEvent, SupplyRule } from './types.ts';

const STOCK = { cube: 7, drum: 5, cone: 3 };

type Stroke = readonly [group: string, what: SupplyEvent['what'], more?: Partial<SupplyEvent>];

const events = (...list: readonly Stroke[]): SupplyEvent[] =>
  list.map(([group, what, more], k) => ({ id: `e${k}`, group, what, ...more }));

const earned = (piece: string, count: number) => ({ kind: 'earned', piece, count }) as const;
const returned = (piece: string, count: number) => ({ kind: 'returned', piece, count }) as const;
const lost = (piece: string, count: number) => ({ kind: 'lost', piece, count, reason: 'crushed' }) as const;
const dropped = (piece: string, count: number) => ({ kind: 'dropped', piece, count }) as const;
const penalty = (points: number) => ({ kind: 'penalty', points, reason: 'talked' }) as const;

describe('what a group has', () => {
  it('[S1] is earned, less lost, less returned, of every kind', () => {
    const list = events(
      ['terns', earned('cone', 3)],
      ['puffins', earned('cube', 5)],
      ['terns', lost('cone', 1)],
      ['terns', returned('cone', 1)],
    );
    expect(supplies(list, STOCK).map(({ group, pieces, lost: gone }) => [group, pieces, gone])).toEqual([
      ['puffins', { cube: 5, drum: 0, cone: 0 }, 0],
      ['terns', { cube: 0, drum: 0, cone: 1 }, 1],
    ]);
    expect(Object.keys(supplies(list, STOCK)[1]?.pieces ?? {})).toEqual(['cube', 'drum', 'cone']);
  });

  it('[S2] a stroke that was taken back counts nowhere', () => {
    const back = { takenBack: true, round: 3, carrier: 'Ada' };
    const list = events(
      ['terns', earned('cube', 3), { round: 1, takenBack: false }],
      ['terns', earned('drum', 5), back],
      ['terns', lost('cube', 7), back],
      ['terns', returned('cone', 3), back],
      ['terns', dropped('cone', 1), back],
      ['terns', penalty(2), back],
      ['eiders', earned('cube', 99), back],
    );
    expect(supplies(list, STOCK)).toEqual(supplies(list.slice(0, 1), STOCK));
    expect(stockLeft(list, STOCK)).toEqual({ cube: 4, drum: 5, cone: 3 });
    expect(supplyIssues(list, STOCK)).toEqual([]);
  });

  it('[S6] a dropped piece was not earned; one that was crushed on the way is earned and lost', () => {
    const list = events(
      ['terns', dropped('cube', 2)],
      ['terns', earned('cube', 1), { carrier: 'Ada' }],
      ['terns', lost('cube', 1)],
    );
    expect(supplies(list, STOCK)[0]).toMatchObject({ pieces: { cube: 0 }, dropped: 2, lost: 1 });
    expect(stockLeft(list, STOCK)).toEqual({ cube: 6, drum: 5, cone: 3 });
  });

  it('[S7] what was earned stands by round and by carrier, whatever became of it', () => {
    const [terns] = supplies(
      events(
        ['terns', earned('cube', 3), { round: 10, carrier: 'Sol' }],
        ['terns', earned('drum', 1), { round: 2, carrier: 'Ada' }],
        ['terns', earned('cube', 2), { round: 2, carrier: 'Sol' }],
        ['terns', earned('cone', 1)],
        ['terns', lost('cube', 3), { round: 2, carrier: 'Sol' }],
        ['terns', dropped('cube', 1), { round: 5, carrier: 'Kim' }],
      ),
      STOCK,
    );
    expect(terns?.byRound).toEqual([
      { round: 2, pieces: 3 },
      { round: 10, pieces: 3 },
    ]);
    expect(terns?.byCarrier).toEqual([
      { carrier: 'Ada', pieces: 1 },
      { carrier: 'Sol', pieces: 5 },
    ]);
  });

  it('[S8] penalties add up exactly, and take no pieces', () => {
    const [terns] = supplies(events(['terns', penalty(0.1)], ['terns', penalty(0.2)]), STOCK);
    expect(terns).toMatchObject({ penaltyPoints: 0.3, pieces: { cube: 0, drum: 0, cone: 0 } });
  });
});

describe('strokes that go too far', () => {
  it('[S4] no more is handed out than the class has left, over all groups', () => {
    const list = events(
      ['terns', earned('cone', 2)],
      ['puffins', earned('cone', 2)],
      ['puffins', earned('cone', 1)],
      ['terns', earned('arch', 1)],
      ['terns', returned('cone', 1)],
      ['puffins', earned('cone', 1)],
    );
    expect(supplyIssues(list, STOCK)).toEqual([
      { code: 'stock-exceeded', event: 1, piece: 'cone', count: 2, left: 1 },
      { code: 'stock-exceeded', event: 3, piece: 'arch', count: 1, left: 0 },
    ]);
  });

  it('[S3] a lost piece does not come back', () => {
    const list = events(['terns', earned('cone', 3)], ['terns', lost('cone', 3)], ['puffins', earned('cone', 1)]);
    expect(supplyIssues(list, STOCK)).toEqual([{ code: 'stock-exceeded', event: 2, piece: 'cone', count: 1, left: 0 }]);
  });

  it('[S5] a group loses and returns no more than it has at that time', () => {
    const list = events(
      ['puffins', earned('cube', 5)],
      ['terns', returned('cube', 1)],
      ['terns', earned('cube', 2)],
      ['terns', lost('cube', 1)],
      ['terns', returned('cube', 2)],
      ['terns', lost('cube', 1)],
    );
    expect(supplyIssues(list, STOCK)).toEqual([
      { code: 'more-than-the-group-has', event: 1, piece: 'cube', count: 1, has: 0 },
      { code: 'more-than-the-group-has', event: 4, piece: 'cube', count: 2, has: 1 },
    ]);
  });
});

describe('what a supply is worth', () => {
  const cube = { id: 'cube', flatFaces: 6, curvedSurfaces: 0, faces: 6, edges: 12, corners: 8 };
  const drum = { id: 'drum', flatFaces: 2, curvedSurfaces: 1, faces: 3, edges: 2, corners: 0 };
  const cone = { id: 'cone', flatFaces: 1, curvedSurfaces: 1, faces: 2, edges: 1, corners: 1 };
  const has = (pieces: Readonly<Record<string, number>>): Supply => ({
    group: 'terns',
    pieces,
    dropped: 0,
    lost: 0,
    penaltyPoints: 2.5,
    byRound: [],
    byCarrier: [],
  });

  it('[S9] counts pieces, kinds, full sets, faces, edges and corners of what the group has', () => {
    const values = supplyFactValues(has({ cube: 3, drum: 5, cone: 2 }), [cube, drum, cone]);
    expect(values).toEqual({
      'earned:pieces': 10,
      'earned:kinds': 3,
      'earned:full-sets': 2,
      'earned:faces': 3 * 6 + 5 * 3 + 2 * 2,
      'earned:flat-faces': 3 * 6 + 5 * 2 + 2,
      'earned:curved-surfaces': 5 + 2,
      'earned:edges': 3 * 12 + 5 * 2 + 2,
      'earned:corners': 3 * 8 + 2,
      'earned:penalties': 2.5,
    });
    expect(Object.keys(values)).toEqual(SUPPLY_FACT_IDS);
  });

  it('[S9] a kind that the group has none of leaves no full set', () => {
    for (const pieces of [
      { cube: 3, drum: 5 },
      { cube: 3, drum: 5, cone: 0 },
    ]) {
      const values = supplyFactValues(has(pieces), [cube, drum, cone]);
      expect([values['earned:full-sets'], values['earned:kinds']]).toEqual([0, 2]);
    }
    expect(supplyFactValues(has({}), [])['earned:full-sets']).toBe(0);
  });
});

describe('the end of the game', () => {
  const rule = (ends: SupplyRule['ends']): SupplyRule => ({
    ends,
    handOver: 'at-a-touch',
    dropped: 'must-be-fetched',
  });

  it('[S11] comes with the last second, the last turn or the last piece, as the rule says', () => {
    const time = rule({ kind: 'time', seconds: 300 });
    expect([299.9, 300, 301].map((seconds) => isOver(time, { seconds, turns: 99 }, {}))).toEqual([false, true, true]);
    const turns = rule({ kind: 'turns', turns: 7 });
    expect([6, 7].map((n) => isOver(turns, { seconds: 9999, turns: n }, {}))).toEqual([false, true]);
    const empty = rule({ kind: 'stock-empty' });
    const played = { seconds: 9999, turns: 99 };
    expect(
      [
        { cube: 0, cone: 1 },
        { cube: 0, cone: 0 },
      ].map((left) => isOver(empty, played, left)),
    ).toEqual([false, true]);
  });
});
