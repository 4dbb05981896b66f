import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { languageOf } from './device.ts';
import { createSession } from './session.ts';
import type { Changes, ClassStorage, Kept } from './storage.ts';
import { changesBetween } from './storage.ts';
import { whereAt } from './where-at.ts';

/** Notes what it was given to keep, and says that it kept it. */
function noting(outcome: Kept = 'kept') {
  const kept: Changes[] = [];
  const storage: ClassStorage = {
    list: async () => [],
    open: async () => null,
    remove: async () => 'kept',
    keep: async (_, changes) => {
      kept.push(changes);
      return outcome;
    },
  };
  return { kept, storage };
}

function opened(outcome: Kept = 'kept') {
  const { kept, storage } = noting(outcome);
  const session = createSession(storage, ['en-GB']);
  session.getState().begin('class-1', demoClass());
  return { kept, session };
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
const layout = (...kinds: string[]): Layout => ({
  kind: 'laid-out',
  pieces: kinds.map((kind) => ({ kind, resting: 'base', xMm: 0, yMm: 0, turnRad: 0 })),
});

describe('a session', () => {
  it('begins at the first group and challenge, at its last try', () => {
    const { session } = opened();
    const { record, place } = session.getState();
    const at = whereAt(record, place);
    expect([at?.group.id, at?.challenge.id, at?.attempt?.id]).toEqual([
      'puffins',
      'tall-light',
      'tall-light-puffins-0941',
    ]);
  });

  it('keeps the whole class once, then only what changed', async () => {
    const { kept, session } = opened();
    session.getState().layOut(layout('cube'));
    await settled();
    expect(kept.map(({ frame, attempts }) => [frame !== null, attempts.length])).toEqual([
      [true, 19],
      [false, 1],
    ]);
  });

  it('tells when there is no room, and keeps on working', async () => {
    const { session } = opened('full');
    await settled();
    expect(session.getState().saved).toBe('full');
    session.getState().layOut(layout('cube'));
    expect(at(session).attempt?.layout).toEqual(layout('cube'));
  });

  it('of a changed build asks to be seen again', () => {
    const { session } = opened();
    expect(at(session).attempt?.confirmedBy).toBe('teacher');
    session.getState().layOut(layout('cube'));
    expect(at(session).attempt?.confirmedBy).toBeNull();
  });

  it('undoes back to the first layout and redoes to the last', () => {
    const { session } = opened();
    const first = at(session).attempt?.layout;
    const steps = [layout('cube'), layout('cube', 'cone'), layout('cone')];
    for (const step of steps) session.getState().layOut(step);
    for (const _ of steps) session.getState().undo();
    expect(at(session).attempt?.layout).toEqual(first);
    session.getState().undo();
    expect(at(session).attempt?.layout).toEqual(first);
    for (const _ of steps) session.getState().redo();
    expect(at(session).attempt?.layout).toEqual(layout('cone'));
  });

  it('takes the height from a photo back with the layout that was traced on it', () => {
    const { session } = opened();
    const heightMm = () => at(session).attempt?.observed.photoHeightMm;
    const before = heightMm();
    session.getState().layOut(layout('cube'), 73);
    session.getState().layOut(layout('cube', 'cone'));
    expect(heightMm()).toBe(73);
    session.getState().undo();
    session.getState().undo();
    expect(heightMm()).toBe(before);
    session.getState().redo();
    expect(heightMm()).toBe(73);
    session.getState().layOut(layout('cone'), null);
    expect(heightMm()).toBeUndefined();
  });

  it('the height of a traced build is not that of another one laid in its place', () => {
    const { session } = opened();
    const heightMm = () => at(session).attempt?.observed.photoHeightMm;
    const outlines = { kind: 'traced', outlines: [], pieces: ['cube'] } as const;
    const onPhotos = (...kinds: string[]) => ({ ...layout(...kinds), traced: true }) as const;
    for (const traced of [outlines, onPhotos('cube')] as const) {
      session.getState().layOut(traced, 73);
      session.getState().layOut(layout('cone'));
      expect(heightMm()).toBeUndefined();
      session.getState().undo();
      expect(heightMm()).toBe(73);
    }
    // A piece set right, or the same pieces as a list, are the same build.
    session.getState().layOut(onPhotos('cube', 'cone'));
    session.getState().layOut({ kind: 'numbers-only', pieces: ['cube', 'cone'] });
    expect(heightMm()).toBe(73);
  });

  it('begins a try when a group that has none lays its first piece', () => {
    const { session } = opened();
    const demo = demoClass();
    session.getState().begin('class-2', { ...demo, attempts: [] });
    expect(at(session).attempt).toBeNull();
    session.getState().layOut(layout('cube'));
    session.getState().layOut(layout('cube', 'cone'));
    expect(at(session).tries).toHaveLength(1);
    expect(at(session).attempt?.layout).toEqual(layout('cube', 'cone'));
  });

  it('undoes nothing of another class whose tries have the same names', () => {
    const { session } = opened();
    session.getState().layOut(layout('cube'));
    session.getState().begin('class-2', demoClass());
    const first = at(session).attempt?.layout;
    session.getState().undo();
    expect(at(session).attempt?.layout).toBe(first);
    session.getState().resume('class-1', demoClass());
    const kept = at(session).attempt?.layout;
    session.getState().undo();
    expect(at(session).attempt?.layout).toBe(kept);
  });

  it('goes to the last try there is where the one at work was never kept', () => {
    const { session } = opened();
    session.getState().startTry();
    const lost = at(session).attempt?.id;
    session.getState().resume('class-1', demoClass());
    expect(at(session).attempt?.id).toBe('tall-light-puffins-0941');
    expect(at(session).attempt?.id).not.toBe(lost);
    session.getState().layOut(layout('cube'));
    expect(at(session).attempt?.layout).toEqual(layout('cube'));
  });

  it('begins a try where the only one was never kept', () => {
    const { session } = opened();
    const empty: ClassRecord = { ...demoClass(), attempts: [] };
    session.getState().resume('class-1', empty);
    session.getState().layOut(layout('cube'));
    expect(at(session).attempt?.layout).toEqual(layout('cube'));
  });

  it('counts tries in the order of their times, whatever their order in the file', () => {
    const { session } = opened();
    const demo = demoClass();
    const before = at(session).tries.map(({ id }) => id);
    session.getState().begin('class-2', { ...demo, attempts: [...demo.attempts].reverse() });
    expect(at(session).tries.map(({ id }) => id)).toEqual(before);
    expect(at(session).attempt?.id).toBe('tall-light-puffins-0941');
  });

  it('gives every try an id of its own', () => {
    const { session } = opened();
    for (const _ of [1, 2, 3]) session.getState().startTry();
    const ids = session.getState().record?.attempts.map(({ id }) => id) ?? [];
    expect(new Set(ids).size).toBe(ids.length);
  });
});

const at = (session: ReturnType<typeof createSession>) => {
  const { record, place } = session.getState();
  const where = whereAt(record, place);
  if (where === null) throw new RangeError('no place');
  return where;
};

describe('what is new since the last time', () => {
  const record: ClassRecord = demoClass();
  it('is everything of a class that was never kept', () => {
    expect(changesBetween(null, record).attempts).toHaveLength(record.attempts.length);
  });
  it('is nothing of the same class', () => {
    expect(changesBetween(record, record)).toEqual({ frame: null, attempts: [], removed: [] });
  });
  it('is what was taken out', () => {
    const [first, ...others] = record.attempts;
    expect(changesBetween(record, { ...record, attempts: others }).removed).toEqual([first?.id]);
  });
});

it('the language is the first of the browser that there are words for', () => {
  expect(languageOf(['fr-FR', 'es-MX', 'en'])).toBe('es');
  expect(languageOf(['en-GB', 'es'])).toBe('en');
  expect(languageOf(['fr'])).toBe('en');
});
