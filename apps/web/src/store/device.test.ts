import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { DeviceMemory } from './device.ts';
import { recall, remember } from './device.ts';

const NOTHING: DeviceMemory = { language: null, units: null, place: null, role: 'teacher' };

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
  });
});
afterEach(() => vi.unstubAllGlobals());

describe('what a device remembers', () => {
  it('is what it was told', () => {
    const place = { classId: 'c', group: 'puffins', challenge: 'tall-light', attempt: null };
    const memory: DeviceMemory = { language: 'es', units: 'in', place, role: 'judge' };
    remember(memory);
    expect(recall()).toEqual(memory);
  });

  it('is nothing of a language that there are no words for, of unknown units, of a place that is none', () => {
    localStorage.setItem('cairnmark.device', '{"language":"xx","units":"ell","place":{"classId":7}}');
    expect(recall()).toEqual(NOTHING);
    localStorage.setItem('cairnmark.device', '{"place":{"classId":"c","group":"g","challenge":"h","attempt":3}}');
    expect(recall()).toEqual(NOTHING);
  });

  it.each(['null', '[', '3'])('is nothing where %s is kept', (text) => {
    localStorage.setItem('cairnmark.device', text);
    expect(recall()).toEqual(NOTHING);
  });
});
