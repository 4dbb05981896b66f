import { demoClass } from '@cairnmark/demo';
import type { Statics } from '@cairnmark/engine';
import { scoreClass, USUAL_LIMITS } from '@cairnmark/engine';
import { faultsOf, NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { noTabs } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { addChallenge, addWithBuilds, copyOf, nameTold } from './challenge-copies.ts';

const CLASS = demoClass();
const [TALL, ROCK] = CLASS.challenges as [(typeof CLASS.challenges)[0], (typeof CLASS.challenges)[0]];

describe('a copy of a challenge', () => {
  it('has the same rules, a name and an id of its own, and no tries; it stands right behind the first', () => {
    const copy = copyOf(CLASS, TALL);
    const after = addChallenge(copy, TALL.id)(CLASS);
    expect(after.challenges.map(({ name }) => name)).toEqual([
      'Tall Light',
      'Tall Light 2',
      'Narrow Rock',
      'Harbour Wall',
    ]);
    expect({ ...copy, id: TALL.id, name: TALL.name }).toEqual(TALL);
    expect(after.attempts).toBe(CLASS.attempts);
    expect(faultsOf('class', after)).toEqual([]);
    expect(copyOf(after, copy).name).toBe('Tall Light 3');
  });

  it('has a name that a file can hold, however long the first one is', () => {
    const long = 'x'.repeat(NAME_CHARACTERS_MOST);
    const taken = [long, nameTold(long, [long])];
    const third = nameTold(long, taken);
    expect(third).toHaveLength(NAME_CHARACTERS_MOST);
    expect(taken).not.toContain(third);
    expect(nameTold('7', ['7'])).toBe('7 2');
    expect(nameTold('Round 5', ['Round 5'])).toBe('Round 6');
  });
});

describe('a copy with the builds', () => {
  const copy = copyOf(CLASS, ROCK);
  const after = addWithBuilds(copy, ROCK.id)(CLASS);

  it('has a copy of every try, as provisional as it was, and leaves the first ones as they are', () => {
    const of = (id: string) => after.attempts.filter(({ challenge }) => challenge === id);
    const plain = of(copy.id).map(({ id: _, challenge: __, ...rest }) => rest);
    expect(plain).toEqual(of(ROCK.id).map(({ id: _, challenge: __, ...rest }) => rest));
    expect(after.attempts.slice(0, CLASS.attempts.length)).toEqual(CLASS.attempts);
    expect(faultsOf('class', after)).toEqual([]);
  });

  it('changes no place of the first challenge and none of the day, until it is given a weight', () => {
    // Without the forts, which take seconds to judge.
    const towers = { ...CLASS, attempts: CLASS.attempts.filter(({ challenge }) => challenge !== 'harbour-wall') };
    const [before, now] = [towers, addWithBuilds(copy, ROCK.id)(towers)].map((record) => {
      const scored = scoreClass(record, STATICS);
      if (!scored.ok) throw new RangeError(JSON.stringify(scored.issues));
      return scored.value;
    });
    expect(now?.day).toEqual(before?.day);
    expect(now?.standings.get(ROCK.id)).toEqual(before?.standings.get(ROCK.id));
    expect(now?.standings.get(copy.id)).toEqual(before?.standings.get(ROCK.id));
  });

  it('takes what was earned along', () => {
    const stroke = {
      id: 's-1',
      group: CLASS.groups[0]?.id ?? '',
      what: { kind: 'earned', piece: ROCK.kit.kinds[0]?.id ?? '', count: 2 },
    } as const;
    const game = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
    const earned = {
      ...CLASS,
      challenges: CLASS.challenges.map((one) => (one.id === ROCK.id ? { ...one, supply: game } : one)),
      supplies: { [ROCK.id]: [stroke] },
    };
    const copied = addWithBuilds(copyOf(earned, { ...ROCK, supply: game }), ROCK.id)(earned);
    expect(copied.supplies).toEqual({ [ROCK.id]: [stroke], [copy.id]: [stroke] });
    expect(faultsOf('class', copied)).toEqual([]);
  });
});

const STATICS: Statics = { limits: USUAL_LIMITS, solver: null, tabsOf: noTabs };
