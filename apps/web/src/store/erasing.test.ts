import { demoClass } from '@cairnmark/demo';
import { expect, it } from 'vitest';
import { createSession } from './session.ts';
import type { ClassStorage, Kept } from './storage.ts';

function opened(removal: Kept) {
  const done: string[] = [];
  const storage: ClassStorage = {
    list: async () => [],
    open: async () => null,
    keep: async (id) => {
      await Promise.resolve();
      done.push(`kept ${id}`);
      return 'kept';
    },
    remove: async (id) => {
      done.push(`removed ${id}`);
      return removal;
    },
  };
  const session = createSession(storage, ['en-GB']);
  session.getState().begin('class-1', demoClass());
  return { done, session };
}

it('a class that is deleted is closed, and nothing of it is written afterwards', async () => {
  const { done, session } = opened('kept');
  session.getState().change((record) => ({ ...record, name: 'On its way' }));
  expect(await session.getState().erase()).toBe('kept');
  expect(done).toEqual(['kept class-1', 'kept class-1', 'removed class-1']);
  const { record, place, saved } = session.getState();
  expect([record, place, saved]).toEqual([null, null, 'kept']);
});

it('a class that cannot be deleted stays open', async () => {
  const { session } = opened('failed');
  expect(await session.getState().erase()).toBe('failed');
  expect(session.getState().record?.name).toBe('Skerry Light');
});

it('the next class is kept whole, though one of the same groups was there before', async () => {
  const { done, session } = opened('kept');
  await session.getState().erase();
  session.getState().begin('class-2', demoClass());
  await Promise.resolve().then(() => new Promise((turn) => setTimeout(turn)));
  expect(done.at(-1)).toBe('kept class-2');
});
