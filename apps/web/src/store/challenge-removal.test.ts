import { demoClass } from '@cairnmark/demo';
import { faultsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { addChallenge, addWithBuilds, copyOf, withOwnId } from './challenge-copies.ts';
import { hasCopiesOnly } from './challenge-lock.ts';
import { putBack, removeChallenge } from './challenge-removal.ts';
import { addAttempt, newAttempt } from './class-changes.ts';

const CLASS = demoClass();
const [TALL, ROCK] = CLASS.challenges as [(typeof CLASS.challenges)[0], (typeof CLASS.challenges)[0]];

describe('a challenge that is taken out', () => {
  it.each(CLASS.challenges)('$name: goes with all that is its own, and comes back with it', ({ id }) => {
    const before = { ...CLASS, day: { ...CLASS.day, weights: { [id]: 3 } } };
    const without = removeChallenge(id)(before);
    expect(JSON.stringify(without)).not.toContain(`"${id}"`);
    expect(faultsOf('class', without)).toEqual([]);
    const back = putBack(before, id)(without);
    const inOrder = (one: typeof back) => [...one.attempts].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(inOrder(back)).toEqual(inOrder(before));
    expect({ ...back, attempts: [] }).toEqual({ ...before, attempts: [] });
  });

  it('takes along sizes measured of kinds that no other one has, and brings them back', () => {
    const kind = { ...TALL.kit.kinds[0], id: 'lamp', name: 'Lamp' } as (typeof TALL.kit.kinds)[0];
    const alone = { ...TALL, id: 'alone', kit: { ...TALL.kit, kinds: [kind] } };
    const added = addChallenge(alone, TALL.id)(CLASS);
    const measured = { lamp: kind.solid.sizes };
    const before = { ...added, groups: added.groups.map((group) => ({ ...group, measured })) };
    const without = removeChallenge('alone')(before);
    expect(without.groups.map((group) => group.measured)).toEqual(before.groups.map(() => ({})));
    expect(faultsOf('class', without)).toEqual([]);
    expect(putBack(before, 'alone')(without)).toEqual(before);
  });

  it('comes back into a class that went on meanwhile', () => {
    const without = removeChallenge(ROCK.id)(CLASS);
    const [group] = without.groups;
    if (group === undefined) throw new RangeError('the demo has no group');
    const further = newAttempt(without, group, TALL, '2026-03-05T15:00:00+01:00');
    const back = putBack(CLASS, ROCK.id)(addAttempt(further)(without));
    expect(back.attempts).toHaveLength(CLASS.attempts.length + 1);
    expect(faultsOf('class', back)).toEqual([]);
    expect(putBack(CLASS, ROCK.id)(back)).toBe(back);
  });

  it('comes back beside a new one that has got its name and id since', () => {
    const without = removeChallenge(ROCK.id)(CLASS);
    const again = withOwnId(without, { ...TALL, name: ROCK.name });
    expect(again.id).toBe(ROCK.id);
    const since = addChallenge(again, TALL.id)(without);
    const [group] = since.groups;
    if (group === undefined) throw new RangeError('the demo has no group');
    const built = addAttempt(newAttempt(since, group, again, '2026-03-05T15:00:00+01:00'))(since);
    const back = putBack(CLASS, ROCK.id)(built);
    expect(back.challenges).toHaveLength(CLASS.challenges.length + 1);
    expect(back.attempts).toHaveLength(CLASS.attempts.length + 1);
    expect(faultsOf('class', back)).toEqual([]);
  });

  it('comes back with its copied tries as copies, though others have got their ids since', () => {
    const copy = copyOf(CLASS, ROCK);
    const before = addWithBuilds(copy, ROCK.id)(CLASS);
    const without = removeChallenge(copy.id)(before);
    const since = addWithBuilds(copyOf(without, TALL), TALL.id)(without);
    const back = putBack(before, copy.id)(since);
    expect(faultsOf('class', back)).toEqual([]);
    expect(hasCopiesOnly(back, copy.id)).toBe(true);
  });
});
