import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { forgetClass } from './forget-class.ts';

let kept = new Map<string, string>();

beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    get length() {
      return kept.size;
    },
    key: (k: number) => [...kept.keys()][k] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
    removeItem: (key: string) => kept.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

it('forgets what names the class, and nothing else', () => {
  kept.set('cairnmark.board', JSON.stringify({ classId: 'c3', board: {} }));
  kept.set('cairnmark.board.frozen', 'a class file');
  kept.set('cairnmark.watch', JSON.stringify({ 'c3/try-1': 5, 'c33/try-1': 7 }));
  kept.set('cairnmark.pins', JSON.stringify({ c3: '3571', c5: '1234' }));
  kept.set('cairnmark.device', JSON.stringify({ language: 'es' }));
  kept.set('of-another-page', JSON.stringify({ classId: 'c3' }));
  forgetClass('c3');
  expect(Object.fromEntries(kept)).toEqual({
    'cairnmark.watch': JSON.stringify({ 'c33/try-1': 7 }),
    'cairnmark.pins': JSON.stringify({ c5: '1234' }),
    'cairnmark.device': JSON.stringify({ language: 'es' }),
    'of-another-page': JSON.stringify({ classId: 'c3' }),
  });
});

it('leaves the frozen Board of another class alone', () => {
  kept.set('cairnmark.board', JSON.stringify({ classId: 'c5', board: {} }));
  kept.set('cairnmark.board.frozen', 'a class file');
  forgetClass('c3');
  expect(kept.size).toBe(2);
});
