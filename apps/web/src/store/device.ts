// What this device remembers for itself: language, units, and where the class was left. Small, and never part of a class.

import type { Language } from '@cairnmark/words';
import { LANGUAGES } from '@cairnmark/words';

export type Units = 'cm' | 'in';

/** Where somebody was at work. */
export interface Place {
  readonly classId: string;
  readonly group: string;
  readonly challenge: string;
  /** null: the group has not begun there. */
  readonly attempt: string | null;
}

export interface DeviceMemory {
  readonly language: Language | null;
  readonly units: Units | null;
  readonly place: Place | null;
}

const KEY = 'cairnmark.device';
const NOTHING: DeviceMemory = { language: null, units: null, place: null };

export function recall(): DeviceMemory {
  try {
    return { ...NOTHING, ...(JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<DeviceMemory>) };
  } catch {
    return NOTHING;
  }
}

export function remember(memory: DeviceMemory): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(memory));
  } catch {
    // A device that keeps nothing asks again next time.
  }
}

/** The first language of the browser that there are words for. */
export function languageOf(preferred: readonly string[]): Language {
  const codes = preferred.map((tag) => tag.slice(0, 2).toLowerCase());
  return codes.flatMap((code) => LANGUAGES.filter((language) => language === code))[0] ?? 'en';
}
