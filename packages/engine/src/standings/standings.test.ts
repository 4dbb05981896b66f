// Boards of small classes. Heights are read with a ruler, so that the layouts need not be drawn.

import type { OutReason } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, group, laid, numbersOnly, reportOn } from '../../../../tests/reference/small-class.ts';
import type { Attempt, Challenge } from '../types.ts';
import { countingReports } from './counting.ts';
import { standings } from './standings.ts';

const TERNS = [group('terns')];

function tried(id: string, heightMm: number, changes: Partial<Attempt> = {}): Attempt {
  const observed = { heightReadingsMm: [heightMm] };
  return attempt({ id, layout: numbersOnly('slab', 'cube'), observed, ...changes });
}

/** The attempt of the terns that counts. */
function counts(attempts: readonly Attempt[], at: Challenge = challenge()): string | undefined {
  const reports = attempts.map((one) => reportOn(one, at));
  const forwards = countingReports(reports, at, TERNS).get('terns')?.attempt;
  const backwards = countingReports([...reports].reverse(), at, TERNS).get('terns')?.attempt;
  expect(backwards).toBe(forwards);
  return forwards;
}

function outOf(attempts: readonly Attempt[], at: Challenge = challenge()): readonly OutReason[] | undefined {
  return standings(
    attempts.map((one) => reportOn(one, at)),
    at,
    TERNS,
  )[0]?.out;
}

const at = (time: string) => ({ at: `2026-03-05T${time}:00+01:00` });

describe('which attempt counts', () => {
  it('[A6] best: the one that the ranking puts first', () => {
    expect(counts([tried('a', 350, at('10:00')), tried('b', 412, at('10:10')), tried('c', 390, at('10:20'))])).toBe(
      'b',
    );
    const lowest = challenge({ ranking: { first: { by: 'height', better: 'less', roundTo: 1 }, tieBreaks: [] } });
    expect(counts([tried('a', 350, at('10:00')), tried('b', 412, at('10:10'))], lowest)).toBe('a');
  });

  it('[A6] best: by the tie-breaks too, and among equals the later', () => {
    const fewer = challenge({
      ranking: {
        first: { by: 'height', better: 'more', roundTo: 10 },
        tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 }],
      },
    });
    const tries = [
      tried('a', 412, { ...at('10:20'), layout: numbersOnly('slab', 'cube', 'cube') }),
      tried('b', 409, at('10:00')),
      tried('c', 408, at('10:10')),
    ];
    expect(counts(tries, fewer)).toBe('c');
  });

  it('[A6] best: one that is out counts only if all are, and then the latest', () => {
    const fell = { state: { kind: 'fell', afterSeconds: 3 } } as const;
    expect(counts([tried('a', 350, at('10:00')), tried('b', 412, { ...fell, ...at('10:10') })])).toBe('a');
    const tries = [
      tried('a', 412, { ...fell, ...at('10:00') }),
      attempt({ id: 'b', state: { kind: 'absent' }, ...at('10:10') }),
    ];
    expect(counts(tries)).toBe('b');
    expect(outOf(tries)).toEqual([{ code: 'absent' }]);
  });

  it('[A7] last: the latest, whatever its height and state', () => {
    const last = challenge({ attemptCounts: 'last' });
    expect(
      counts([tried('a', 412, at('10:20')), tried('b', 350, at('10:30')), tried('c', 390, at('10:10'))], last),
    ).toBe('b');
    const fell = { state: { kind: 'fell-before-measuring' } } as const;
    expect(counts([tried('a', 412, at('10:20')), tried('b', 350, { ...fell, ...at('10:30') })], last)).toBe('b');
  });

  it('[A7] last: by the moment, not by the text', () => {
    const last = challenge({ attemptCounts: 'last' });
    const [early, late] = [{ at: '2026-03-05T11:30:00+02:00' }, { at: '2026-03-05T09:45:00Z' }];
    expect(counts([tried('a', 350, early), tried('b', 350, late)], last)).toBe('b');
  });

  it('[A7] last: of two at one moment the better, and of two equal ones always the same', () => {
    const last = challenge({ attemptCounts: 'last' });
    expect(
      counts([tried('a', 350, at('10:30')), tried('b', 412, at('10:30')), tried('c', 500, at('10:00'))], last),
    ).toBe('b');
    expect(counts([tried('b', 350, at('10:30')), tried('a', 350, at('10:30'))], last)).toBe('a');
  });

  it('[A7] chosen: the chosen one, the latest of several', () => {
    const chosen = challenge({ attemptCounts: 'chosen' });
    const tries = [
      tried('a', 350, { chosen: true, ...at('10:00') }),
      tried('b', 340, { chosen: true, ...at('10:10') }),
      tried('c', 412, at('10:20')),
    ];
    expect(counts(tries, chosen)).toBe('b');
  });

  it('[A3] one that nobody has confirmed does not count beside one that was', () => {
    const open = { confirmedBy: null };
    const tries = [tried('a', 350, at('10:00')), tried('b', 412, { ...open, ...at('10:10') })];
    expect(counts(tries)).toBe('a');
    expect(counts(tries, challenge({ attemptCounts: 'last' }))).toBe('a');
    expect(outOf([tried('b', 412, open)])).toEqual([{ code: 'not-confirmed' }]);
  });

  it('[A3] an absence that nobody has confirmed puts no confirmed attempt aside, be it the last or the chosen one', () => {
    const absent = attempt({ id: 'b', state: { kind: 'absent' }, confirmedBy: null, chosen: true, ...at('10:10') });
    for (const attemptCounts of ['best', 'last', 'chosen'] as const) {
      expect(counts([tried('a', 350, { chosen: true, ...at('10:00') }), absent], challenge({ attemptCounts }))).toBe(
        'a',
      );
    }
  });

  it('[A8] a group without any is told so', () => {
    expect(outOf([])).toEqual([{ code: 'no-attempt' }]);
    expect(outOf([tried('a', 350)], challenge({ attemptCounts: 'chosen' }))).toEqual([{ code: 'no-attempt' }]);
  });
});

describe('why a build is out', () => {
  it('[A1] absent and not taking part need no confirmation', () => {
    for (const kind of ['absent', 'not-taking-part'] as const) {
      expect(outOf([attempt({ state: { kind }, confirmedBy: null })])).toEqual([{ code: kind }]);
    }
  });

  it('[A2] it fell', () => {
    expect(outOf([attempt({ state: { kind: 'fell', afterSeconds: 7 } })])).toEqual([{ code: 'fell' }]);
    expect(outOf([attempt({ state: { kind: 'fell-before-measuring' } })])).toEqual([{ code: 'fell' }]);
    expect(outOf([attempt({ state: { kind: 'fell-before-measuring' }, confirmedBy: null })])).toEqual([
      { code: 'not-confirmed' },
      { code: 'fell' },
    ]);
  });

  it('[A4] more pieces than the kit has', () => {
    const layout = laid('cube', 'slab', 'cube', 'slab', 'cube', 'slab', 'slab');
    expect(outOf([attempt({ layout })])).toEqual([{ code: 'more-than-the-kit-has', kinds: ['slab', 'cube'] }]);
  });

  it('[A5] rules that must be kept, all that are broken', () => {
    const rules = challenge({
      requirements: [
        { id: 'no-tape', kind: 'judged', text: 'No tape', consequence: { kind: 'must' } },
        { id: 'costly', kind: 'judged', text: 'Hands off', consequence: { kind: 'costs', points: 3 } },
        {
          id: 'five',
          kind: 'measured',
          measure: 'pieces',
          comparison: 'exactly',
          limit: 5,
          consequence: { kind: 'must' },
        },
      ],
    });
    const answers = { 'no-tape': { kept: false }, costly: { kept: false } };
    expect(outOf([attempt({ answers })], rules)).toEqual([{ code: 'rule-broken', requirements: ['no-tape', 'five'] }]);
    const layout = laid('cube', 'slab', 'cube', 'slab', 'slab');
    expect(
      outOf([attempt({ layout, answers: { 'no-tape': { kept: true }, costly: { kept: false } } })], rules),
    ).toEqual([]);
    expect(outOf([attempt({ layout })], rules)).toEqual([]);
  });

  it('[A14] every reason at once: pieces beyond the kit, broken rules, and all that was not measured', () => {
    const must = { consequence: { kind: 'must' } } as const;
    const limited = (id: string, measure: string, limit: number) =>
      ({ id, kind: 'measured', measure, comparison: 'at-least', limit, ...must }) as const;
    const strict = challenge({
      heightCounts: ['ruler'],
      requirements: [
        { id: 'no-tape', kind: 'judged', text: 'No tape', ...must },
        { id: 'cubes', kind: 'only-kinds', kinds: ['cube'], ...must },
        limited('half-minute', 'stood-seconds', 30),
        limited('high', 'height', 100),
        limited('five', 'pieces', 5),
      ],
    });
    // Three cubes of two, a slab; nobody read the height or watched the clock.
    const layout = laid('slab', 'cube', 'cube', 'cube');
    const answers = { 'no-tape': { kept: false } };
    expect(outOf([attempt({ layout, answers, confirmedBy: null })], strict)).toEqual([
      { code: 'not-confirmed' },
      { code: 'more-than-the-kit-has', kinds: ['cube'] },
      { code: 'rule-broken', requirements: ['no-tape', 'cubes', 'five'] },
      { code: 'not-measured', measures: ['height', 'stood-seconds'] },
    ]);
  });

  it('[A9] [K9] under points, every measure by which some may have been lost; a rule not judged yet is open', () => {
    const costs = { consequence: { kind: 'costs', points: 3 } } as const;
    const rules = challenge({
      points: [
        { id: 'high', measure: 'height', points: 1, per: 10, rounding: 'down' },
        { id: 'base', measure: 'base-area', points: -1, per: 100, rounding: 'none' },
        { id: 'courtyard', measure: 'courtyard-area', points: 1, per: 100, rounding: 'none' },
      ],
      requirements: [
        { id: 'no-tape', kind: 'judged', text: 'No tape', ...costs },
        { id: 'half-minute', kind: 'measured', measure: 'stood-seconds', comparison: 'at-least', limit: 30, ...costs },
        { id: 'flat', kind: 'measured', measure: 'base-area', comparison: 'at-most', limit: 1, ...costs },
      ],
      ranking: { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] },
    });
    expect(outOf([tried('a', 412)], rules)).toEqual([
      { code: 'not-measured', measures: ['base-area', 'stood-seconds'] },
    ]);
    // A best try that is known counts before one that is not.
    const known = attempt({ id: 'b', observed: { heightReadingsMm: [80], stoodSeconds: 31 } });
    expect(counts([tried('a', 412), known], rules)).toBe('b');
    // 8 for the height, less 24 for the base and 3 for its rule; no courtyard gives 0, and nobody has judged the tape.
    expect([outOf([known], rules), reportOn(known, rules).total]).toEqual([[], 8 - 24 - 3]);
  });

  it('[A5] a rule on a measure that was not measured', () => {
    const small = challenge({
      requirements: [
        {
          id: 'small',
          kind: 'measured',
          measure: 'base-area',
          comparison: 'at-most',
          limit: 3000,
          consequence: { kind: 'must' },
        },
      ],
    });
    expect(outOf([tried('a', 412)], small)).toEqual([{ code: 'not-measured', measures: ['base-area'] }]);
    const costly = challenge({
      requirements: [
        {
          id: 'small',
          kind: 'measured',
          measure: 'base-area',
          comparison: 'at-most',
          limit: 3000,
          consequence: { kind: 'costs', points: 7 },
        },
      ],
    });
    expect(outOf([tried('a', 412)], costly)).toEqual([]);
  });
});

describe('the board of a challenge', () => {
  const groups = ['eiders', 'fulmars', 'petrels', 'puffins', 'terns'].map((id) => group(id));

  it('ranks the attempts that count, with shared places and near ones', () => {
    const reports = [
      tried('t1', 350, { group: 'terns' }),
      tried('t2', 412.4, { group: 'terns', ...at('10:50') }),
      tried('p1', 412, { group: 'puffins' }),
      tried('e1', 409, { group: 'eiders' }),
      tried('f1', 398, { group: 'fulmars' }),
    ].map((one) => reportOn(one));
    expect(
      standings(reports, challenge(), groups).map((one) => [one.group, one.place, one.sharedWith, one.withinErrorOf]),
    ).toEqual([
      ['puffins', 1, ['terns'], ['eiders']],
      ['terns', 1, ['puffins'], ['eiders']],
      ['eiders', 3, [], ['puffins', 'terns']],
      ['fulmars', 4, [], []],
      ['petrels', null, [], []],
    ]);
  });

  it('ranks by points, with the error that the measures pass on to them', () => {
    // 2 points a cm, unrounded: 412 mm give 82.4, 409 mm 81.8; 3 mm of error are 0.6 each, 0.85 of the difference.
    const byPoints = challenge({
      points: [{ id: 'row', measure: 'height', points: 2, per: 10, rounding: 'none' }],
      ranking: { first: { by: 'points', better: 'more', roundTo: 0 }, tieBreaks: [] },
    });
    const reports = [
      tried('t', 412, { group: 'terns' }),
      tried('p', 409, { group: 'puffins' }),
      tried('e', 407.7, { group: 'eiders' }),
    ].map((one) => reportOn(one, byPoints));
    const board = standings(reports, byPoints, groups.slice(0, 1).concat(groups.slice(3)));
    expect(board.map((one) => [one.group, one.decidedBy[0]?.value, one.withinErrorOf])).toEqual([
      ['terns', 82.4, ['puffins']],
      ['puffins', 81.8, ['eiders', 'terns']],
      ['eiders', 81.54, ['puffins']],
    ]);
  });
});
