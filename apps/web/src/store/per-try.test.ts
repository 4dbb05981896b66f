import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { perTry } from './per-try.ts';

const numbers = perTry('test', (kept) => (typeof kept === 'number' ? kept : null));
const texts = new Map<string, string>();

beforeEach(() => {
  texts.clear();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => texts.set(key, text),
  });
});
afterEach(() => vi.unstubAllGlobals());

describe('what the device remembers of a try', () => {
  it('is of that try in that class alone, and can be forgotten', () => {
    numbers.remember('class-1', 'try-1', 4);
    expect(numbers.recall('class-1', 'try-1')).toBe(4);
    expect(numbers.recall('class-2', 'try-1')).toBe(null);
    expect(numbers.recall('class-1', 'try-2')).toBe(null);
    numbers.remember('class-1', 'try-1', null);
    expect(numbers.recall('class-1', 'try-1')).toBe(null);
  });

  it('is of the latest tries only', () => {
    for (let k = 0; k < 300; k += 1) numbers.remember('class-1', `try-${k}`, k);
    expect(numbers.recall('class-1', 'try-299')).toBe(299);
    expect(numbers.recall('class-1', 'try-0')).toBe(null);
  });

  it('is nothing where it cannot be read, or nothing is kept', () => {
    texts.set('test', '{not json');
    expect(numbers.recall('class-1', 'try-1')).toBe(null);
    texts.set('test', '{"class-1/try-1":"four"}');
    expect(numbers.recall('class-1', 'try-1')).toBe(null);
    vi.stubGlobal('localStorage', undefined);
    numbers.remember('class-1', 'try-1', 4);
    expect(numbers.recall('class-1', 'try-1')).toBe(null);
  });
});
