import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { isPin, pinOf, setPin } from './pins.ts';

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
  });
});
afterEach(() => vi.unstubAllGlobals());

it('a class has its own PIN, until it is taken away', () => {
  setPin('c3', '3571');
  setPin('c5', '0042');
  expect([pinOf('c3'), pinOf('c5'), pinOf('c7')]).toEqual(['3571', '0042', null]);
  setPin('c3', null);
  expect([pinOf('c3'), pinOf('c5')]).toEqual([null, '0042']);
});

it('has four figures', () => {
  expect(['3571', '357', '35711', '35a1', ' 3571'].map(isPin)).toEqual([true, false, false, false, false]);
});

it('is none where this device keeps nothing, or kept what is no PIN', () => {
  localStorage.setItem('cairnmark.pins', '{"c3":"open"}');
  expect(pinOf('c3')).toBeNull();
  vi.stubGlobal('localStorage', undefined);
  expect(setPin('c3', '3571')).toBe(false);
  expect(pinOf('c3')).toBeNull();
});
