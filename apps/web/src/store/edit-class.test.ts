import { demoClass } from '@cairnmark/demo';
import { expect, it } from 'vitest';
import { edit } from './edit-class.ts';
import { createSession } from './session.ts';
import type { ClassStorage } from './storage.ts';

const NOWHERE: ClassStorage = {
  list: async () => [],
  open: async () => null,
  keep: async () => 'kept',
  remove: async () => 'kept',
};

const opened = () => {
  const store = createSession(NOWHERE, ['en']);
  store.getState().begin('class-3', demoClass());
  return store;
};

it('a change that would spoil the class is refused with the place, and nothing changes', () => {
  const store = opened();
  const before = store.getState().record;
  const faults = edit(store, (record) => ({ ...record, groups: record.groups.slice(1) }));
  expect(faults.map(({ code }) => code)).toContain('group-unknown');
  expect(store.getState().record).toBe(before);
});

it('a change of the wrong shape is refused too', () => {
  const store = opened();
  const faults = edit(store, (record) => ({ ...record, name: '' }));
  expect(faults.map(({ path }) => path)).toEqual([['name']]);
  expect(store.getState().record?.name).toBe('Skerry Light');
});

it('a change that leaves the class in order is done', () => {
  const store = opened();
  expect(edit(store, (record) => ({ ...record, name: 'Harbour, second time' }))).toEqual([]);
  expect(store.getState().record?.name).toBe('Harbour, second time');
});
