import { demoClass } from '@cairnmark/demo';
import type { Challenge } from '@cairnmark/engine';
import { READY_IDS, readyChallenge, readyChallengeFor } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { withWeight } from './day-changes.ts';
import { emptyChallenge } from './empty-challenge.ts';
import {
  addKey,
  isAskedFor,
  keysOf,
  moveKey,
  removeKey,
  unitsOf,
  withGrade,
  withHeight,
  withReward,
  withRuler,
  withShown,
  withSupply,
} from './rule-settings.ts';

const CLASS = demoClass();
const [TALL, , WALL] = CLASS.challenges as [Challenge, Challenge, Challenge];

describe('what is compared', () => {
  const three = addKey({ by: 'volume', better: 'more', roundTo: 0 })(
    addKey({ by: 'pieces', better: 'less', roundTo: 1 })(TALL),
  );
  const order = (challenge: Challenge): string[] => keysOf(challenge).map(({ by }) => by);

  it('is asked in the order that somebody set, the first included', () => {
    expect(order(three)).toEqual(['height', 'pieces', 'volume']);
    expect(order(moveKey(1, -1)(three))).toEqual(['pieces', 'height', 'volume']);
    expect(order(moveKey(0, -1)(three))).toEqual(['height', 'pieces', 'volume']);
    expect(order(removeKey(0)(three))).toEqual(['pieces', 'volume']);
  });

  it('is never nothing', () => {
    expect(removeKey(0)(TALL)).toBe(TALL);
    expect(withHeight('ruler', false)({ ...TALL, heightCounts: ['ruler'] }).heightCounts).toEqual(['ruler']);
  });
});

describe('settings', () => {
  it('a grade sets ruler, pi and what is hidden, but hides nothing that the rules ask for', () => {
    const early = withGrade('grades-2-3')(WALL);
    expect([early.ruler, early.own.pi]).toEqual(['cm', '3']);
    expect(early.hidden).toContain('paper');
    expect(early.hidden).not.toContain('courtyard-area');
    expect(isAskedFor('courtyard-area', early)).toBe(true);
    expect(withShown('paper', true)(early).hidden).not.toContain('paper');
    expect(withGrade('grades-6-8')(early).hidden).toEqual([]);
  });

  it('a class that measures in inches goes on in inches, whatever grade is chosen', () => {
    const inches = withRuler('inch')(TALL);
    const rulers = (['grades-2-3', 'grades-4-5', 'grades-6-8'] as const).map((grade) => withGrade(grade)(inches).ruler);
    expect(rulers).toEqual(['inch', 'quarter-inch', 'sixteenth-inch']);
    expect([...READY_IDS].map((id) => unitsOf(readyChallengeFor(id, id, TALL.kit, null, { units: 'in' })))).toEqual(
      READY_IDS.map(() => 'in'),
    );
  });

  it('heights compared in whole divisions of the ruler are so with the next ruler; a typed step stays', () => {
    const key = { by: 'height', better: 'more', roundTo: 5 } as const;
    const ranked = { ...TALL, ruler: 'half-cm', ranking: { first: key, tieBreaks: [{ ...key, roundTo: 7 }] } } as const;
    const steps = keysOf(withRuler('quarter-inch')(ranked)).map(({ roundTo }) => roundTo);
    expect(steps).toEqual([25.4 / 4, 7]);
  });

  it('an empty challenge compares heights as its own ruler reads', () => {
    const empty = emptyChallenge('New', withRuler('inch')(TALL));
    expect([empty.ruler, empty.ranking.first.roundTo]).toEqual(['inch', 25.4]);
  });

  it('without the game nothing stays hidden that only the game has', () => {
    const game = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
    const played = withShown('earned:pieces', false)(withSupply(game)(TALL));
    expect(faultsOf('challenge', withSupply(null)(played))).toEqual([]);
  });

  it('one reward a measure, and none again', () => {
    const twice = withReward('volume', 3)(withReward('volume', 2)(TALL));
    expect(twice.own.rewards).toEqual([{ measure: 'volume', points: 3 }]);
    expect(withReward('volume', null)(twice)).toEqual(TALL);
  });

  it('a usual weight is not listed', () => {
    const heavy = withWeight(TALL.id, 2)(CLASS);
    expect(heavy.day.weights).toEqual({ [TALL.id]: 2 });
    expect(withWeight(TALL.id, 1)(heavy)).toEqual(CLASS);
  });

  it('an empty challenge and every ready one can be kept with any kit of the class', () => {
    const fresh = [...READY_IDS.map((id) => readyChallenge(id, id, WALL.kit, null)), emptyChallenge('New', WALL)];
    expect(fresh.flatMap((one) => faultsOf('challenge', one))).toEqual([]);
  });
});
