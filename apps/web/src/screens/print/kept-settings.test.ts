import { demoClass } from '@cairnmark/demo';
import { beforeEach, expect, it, vi } from 'vitest';
import { forgetClass } from '../../store/forget-class.ts';
import { recallSettings, rememberSettings } from './kept-settings.ts';
import { firstSettings } from './settings.ts';

const FIRST = firstSettings(demoClass(), demoClass().challenges[0]!);

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
    removeItem: (key: string) => kept.delete(key),
    key: (k: number) => [...kept.keys()][k] ?? null,
    get length() {
      return kept.size;
    },
  });
});

it('come back as they were left, each class its own', () => {
  const changed = { ...FIRST, pupils: 28, arrange: 'masters', chosen: new Set(['rules', 'nets'] as const) } as const;
  rememberSettings('a', changed);
  expect(recallSettings('a', FIRST)).toEqual(changed);
  expect(recallSettings('b', FIRST)).toEqual(FIRST);
  forgetClass('a');
  expect(recallSettings('a', FIRST)).toEqual(FIRST);
});

it('what another version of the app wrote, or nobody, is as at first', () => {
  const odd = { pupils: 0.5, sets: 'many', arrange: 'spiral', paper: 'letter', extra: 7, chosen: 3 };
  localStorage.setItem('cairnmark.print', JSON.stringify({ a: odd, b: null, c: [1] }));
  expect(recallSettings('a', FIRST)).toEqual({ ...FIRST, paper: 'letter' });
  expect(recallSettings('b', FIRST)).toEqual(FIRST);
  expect(recallSettings('c', FIRST)).toEqual(FIRST);
});
