import { demoClass } from '@cairnmark/demo';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepFrozen, keptFrozen, recallBoard } from './board-memory.ts';
import { NEW_BOARD } from './board-state.ts';
import { createSession } from './session.ts';
import type { ClassStorage } from './storage.ts';

const NO_STORAGE: ClassStorage = {
  list: async () => [],
  open: async () => null,
  keep: async () => 'kept',
  remove: async () => 'kept',
};

/** A browser's storage; `room`: how many letters a text may have. */
function storageOf(room: number) {
  const texts = new Map<string, string>();
  return {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new RangeError('full');
      texts.set(key, text);
    },
    removeItem: (key: string) => texts.delete(key),
  };
}

const opened = () => {
  const session = createSession(NO_STORAGE, ['en']);
  session.getState().begin('class-1', demoClass());
  return session;
};

beforeEach(() => vi.stubGlobal('localStorage', storageOf(1_000_000)));
afterEach(() => vi.unstubAllGlobals());

describe('the frozen board', () => {
  it('keeps the class as it was while work goes on', () => {
    const session = opened();
    const before = session.getState().record;
    session.getState().showOnBoard({ frozen: { since: '2026-03-05T10:00:00+01:00', record: before, copy: 'kept' } });
    session.getState().startTry();
    expect(session.getState().record).not.toBe(before);
    expect(session.getState().board.frozen?.record).toBe(before);
  });

  it('is frozen still after a reload, with its class to be read again', () => {
    const session = opened();
    const { record } = session.getState();
    expect(keepFrozen('the class file')).toBe(true);
    session.getState().showOnBoard({ frozen: { since: '2026-03-05T10:00:00+01:00', record, copy: 'kept' } });
    const later = createSession(NO_STORAGE, ['en']);
    later.getState().resume('class-1', demoClass());
    expect(later.getState().board.frozen).toEqual({ since: '2026-03-05T10:00:00+01:00', record: null, copy: 'kept' });
    expect(keptFrozen()).toBe('the class file');
    later.getState().showOnBoard({ frozen: null });
    expect(keptFrozen()).toBeNull();
  });

  it('tells when this device has no room for it', () => {
    vi.stubGlobal('localStorage', storageOf(3));
    expect(keepFrozen('a long text')).toBe(false);
  });
});

describe('what the board shows', () => {
  it('is remembered for its class alone', () => {
    const session = opened();
    session.getState().showOnBoard({ placesHidden: true, reveal: { 'tall-light': 2 } });
    expect(recallBoard('class-1')).toEqual({ ...NEW_BOARD, placesHidden: true, reveal: { 'tall-light': 2 } });
    expect(recallBoard('class-2')).toEqual(NEW_BOARD);
    session.getState().begin('class-2', demoClass());
    expect(session.getState().board).toEqual(NEW_BOARD);
  });

  it('begins anew where nothing is kept or what is kept cannot be read', () => {
    localStorage.setItem('cairnmark.board', '{');
    expect(recallBoard('class-1')).toEqual(NEW_BOARD);
    vi.unstubAllGlobals();
    expect(recallBoard('class-1')).toEqual(NEW_BOARD);
    expect(keptFrozen()).toBeNull();
  });
});
